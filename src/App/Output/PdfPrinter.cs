using System.ComponentModel;
using System.Diagnostics;

namespace Calx.App.Output;

/// <summary>
/// Prints an HTML file to PDF with a browser of the Chromium family that is on this machine, as most schools' machines have. Nothing is
/// installed and nothing is fetched: the file has all that it needs inside.
/// </summary>
internal static class PdfPrinter
{
    /// <summary>Said where there is no such browser.</summary>
    public const string Missing =
        "no browser was found that can print to PDF by itself; open the HTML file in any browser, choose Print, and save as PDF. A browser can be named in the variable CHROMIUM";

    private static readonly TimeSpan Longest = TimeSpan.FromSeconds(60);

    /// <summary>Names under which such browsers are found, on Linux.</summary>
    private static readonly string[] Names = ["chromium", "chromium-browser", "google-chrome", "google-chrome-stable", "microsoft-edge"];

    /// <summary>Where they are on Windows below a program folder, and on macOS.</summary>
    private static readonly string[] Places =
    [
        @"Microsoft\Edge\Application\msedge.exe", @"Google\Chrome\Application\chrome.exe", @"Chromium\Application\chrome.exe",
        "/Applications/Google Chrome.app/Contents/MacOS/Google Chrome", "/Applications/Microsoft Edge.app/Contents/MacOS/Microsoft Edge",
        "/Applications/Chromium.app/Contents/MacOS/Chromium",
    ];

    /// <summary>The browser's path, or null where none is found.</summary>
    public static string? Find()
    {
        string[] named = Environment.GetEnvironmentVariable("CHROMIUM") is { Length: > 0 } own ? [own] : [];
        IEnumerable<string> onPath = (Environment.GetEnvironmentVariable("PATH") ?? "").Split(Path.PathSeparator)
            .SelectMany(folder => Names.Select(name => Path.Combine(folder, name)));
        IEnumerable<string> programs = new[] { Environment.SpecialFolder.ProgramFiles, Environment.SpecialFolder.ProgramFilesX86, Environment.SpecialFolder.LocalApplicationData }
            .Select(Environment.GetFolderPath).Where(folder => folder.Length > 0).SelectMany(folder => Places.Select(place => Path.Combine(folder, place)));
        return named.Concat(onPath).Concat(programs).Concat(Places).FirstOrDefault(File.Exists);
    }

    /// <summary>Prints a file.</summary>
    /// <param name="browser">The browser's path.</param>
    /// <param name="html">Full path of the HTML file.</param>
    /// <param name="pdf">Full path of the PDF to write.</param>
    /// <exception cref="IOException">The browser did not write it.</exception>
    public static void Print(string browser, string html, string pdf)
    {
        // A profile of its own: a browser that is open already would take the work and print nothing.
        DirectoryInfo profile = Directory.CreateTempSubdirectory("calx-print-");
        try
        {
            using Process printing = Process.Start(new ProcessStartInfo(browser, [.. Words(profile.FullName), $"--print-to-pdf={pdf}", new Uri(html).AbsoluteUri])
            {
                RedirectStandardOutput = true, RedirectStandardError = true,
            }) ?? throw new IOException("the browser does not start");
            printing.BeginOutputReadLine();
            printing.BeginErrorReadLine();
            if (!printing.WaitForExit(Longest))
            {
                printing.Kill(entireProcessTree: true);
                throw new IOException("the browser did not finish printing within a minute");
            }

            if (!File.Exists(pdf))
            {
                throw new IOException("the browser printed nothing");
            }
        }
        catch (Win32Exception)
        {
            throw new IOException("the browser does not start");
        }
        finally
        {
            Drop(profile);
        }
    }

    private static IEnumerable<string> Words(string profile) =>
    [
        "--headless", "--disable-gpu", "--no-first-run", "--disable-background-networking", "--disable-component-update", "--disable-sync",
        "--no-pdf-header-footer", $"--user-data-dir={profile}",

        // As the administrator of Linux, as in a test, such a browser starts only without its sandbox; the file is our own.
        .. OperatingSystem.IsLinux() && Environment.IsPrivilegedProcess ? ["--no-sandbox"] : Array.Empty<string>(),
    ];

    private static void Drop(DirectoryInfo profile)
    {
        try
        {
            profile.Delete(recursive: true);
        }
        catch (Exception failure) when (failure is IOException or UnauthorizedAccessException)
        {
            // The browser may still hold a file of it; it lies in the folder for temporary files.
        }
    }
}
