namespace Calx.Browser.Tests;

/// <summary>Keeps pictures of pages under docs/screens, only where the variable CALX_SCREENS is 1: a plain run of the tests leaves
/// the checkout as it is.</summary>
internal static class Pictures
{
    /// <summary>So many bytes that a clone stays small.</summary>
    private const int Largest = 250_000;

    /// <summary>Keeps one of what a page shows.</summary>
    public static async Task Keep(IPage page, string name)
    {
        if (Environment.GetEnvironmentVariable("CALX_SCREENS") != "1")
        {
            return;
        }

        string folder = Path.Combine(Home(), "docs", "screens");
        Directory.CreateDirectory(folder);
        byte[] picture = await page.ScreenshotAsync(new PageScreenshotOptions { Animations = ScreenshotAnimations.Disabled });
        Assert.True(picture.Length <= Largest, $"The picture {name} has {picture.Length} bytes.");
        await File.WriteAllBytesAsync(Path.Combine(folder, $"{name}.png"), picture);
    }

    private static string Home()
    {
        string folder = AppContext.BaseDirectory;
        while (!File.Exists(Path.Combine(folder, "Calx.slnx")))
        {
            folder = Path.GetDirectoryName(folder.TrimEnd(Path.DirectorySeparatorChar))
                ?? throw new InvalidOperationException("These tests run from a checkout.");
        }

        return folder;
    }
}
