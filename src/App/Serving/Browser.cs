using System.ComponentModel;
using System.Diagnostics;

namespace Calx.App.Serving;

/// <summary>Opens a page in the person's browser, where there is a screen to open it on.</summary>
public static class Browser
{
    /// <summary>Tries; without a browser the address on the terminal has to do.</summary>
    public static void TryOpen(Uri page)
    {
        bool noScreen = OperatingSystem.IsLinux()
            && string.IsNullOrEmpty(Environment.GetEnvironmentVariable("DISPLAY")) && string.IsNullOrEmpty(Environment.GetEnvironmentVariable("WAYLAND_DISPLAY"));
        if (noScreen)
        {
            return;
        }

        try
        {
            using Process? opened = OperatingSystem.IsWindows() ? Process.Start(new ProcessStartInfo(page.ToString()) { UseShellExecute = true })
                : Process.Start(OperatingSystem.IsMacOS() ? "open" : "xdg-open", page.ToString());
        }
        catch (Exception failure) when (failure is Win32Exception or FileNotFoundException or InvalidOperationException)
        {
            // No browser is known here.
        }
    }
}
