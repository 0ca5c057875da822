namespace Calx.App.Tests;

/// <summary>The folder that the tests were built in.</summary>
internal static class Checkout
{
    /// <summary>Full path of a file of the checkout.</summary>
    public static string PathOf(string name) => Path.Combine(Home(), name);

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
