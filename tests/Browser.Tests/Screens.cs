namespace Calx.Browser.Tests;

/// <summary>The screens of a lesson.</summary>
internal static class Screens
{
    /// <summary>A student's phone, held upright.</summary>
    public static BrowserNewContextOptions Phone(ColorScheme scheme = ColorScheme.Light) => new()
    {
        ViewportSize = new ViewportSize { Width = 360, Height = 740 }, HasTouch = true, IsMobile = true, ColorScheme = scheme,
    };

    /// <summary>The teacher's laptop, and the station at a balance.</summary>
    public static BrowserNewContextOptions Laptop(ColorScheme scheme = ColorScheme.Light) => new()
    {
        ViewportSize = new ViewportSize { Width = 1280, Height = 800 }, ColorScheme = scheme,
    };

    /// <summary>The same screen for axe, which puts styles of its own into a page.</summary>
    public static BrowserNewContextOptions ForAxe(this BrowserNewContextOptions screen)
    {
        screen.BypassCSP = true;
        return screen;
    }
}
