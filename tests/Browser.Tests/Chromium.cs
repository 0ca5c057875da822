[assembly: AssemblyFixture(typeof(Calx.Browser.Tests.Chromium))]
[assembly: Xunit.v3.Parallelization(Mode = Xunit.Sdk.ParallelMode.None)]

namespace Calx.Browser.Tests;

/// <summary>The system's own Chromium, started once for all tests. Where there is none, the tests are skipped.</summary>
public sealed class Chromium : IAsyncLifetime
{
    /// <summary>How long is waited for what must come: a machine that does other work at once is no fault.</summary>
    public const float PatienceInMilliseconds = 30_000;

    /// <summary>No calls home, no sandbox (the tests may run as root), no graphics card.</summary>
    private static readonly string[] Flags =
    [
        "--no-sandbox", "--disable-gpu", "--disable-quic", "--no-first-run", "--disable-background-networking", "--disable-component-update", "--disable-sync",
    ];

    private static readonly string[] Names = ["chromium", "chromium-browser", "google-chrome", "chrome.exe"];

    private IPlaywright? playwright;
    private IBrowser? browser;
    private DemoLab? demo;

    /// <summary>The browser; skips the test where there is none.</summary>
    public IBrowser Needed()
    {
        Assert.SkipWhen(browser is null, "No Chromium was found: install one, or name it in the variable CHROMIUM.");
        return browser;
    }

    /// <summary>The lab over the demo's records, opened when it is first asked for; the pages of earlier tests are closed.</summary>
    internal async Task<DemoLab> Demo()
    {
        if (demo is not null)
        {
            await demo.Lab.CloseBrowsers();
        }

        return demo ??= await DemoLab.Open(this);
    }

    public async ValueTask InitializeAsync()
    {
        if (Find() is not string program)
        {
            return;
        }

        Environment.SetEnvironmentVariable("PLAYWRIGHT_SKIP_BROWSER_DOWNLOAD", "1");
        playwright = await Playwright.CreateAsync();
        browser = await playwright.Chromium.LaunchAsync(new BrowserTypeLaunchOptions { ExecutablePath = program, Args = Flags });
        SetDefaultExpectTimeout(PatienceInMilliseconds);
    }

    public async ValueTask DisposeAsync()
    {
        if (demo is not null)
        {
            await demo.Lab.DisposeAsync();
        }

        if (browser is not null)
        {
            await browser.CloseAsync();
        }

        playwright?.Dispose();
    }

    private static string? Find()
    {
        if (Environment.GetEnvironmentVariable("CHROMIUM") is { Length: > 0 } named)
        {
            return named;
        }

        IEnumerable<string> folders = (Environment.GetEnvironmentVariable("PATH") ?? "").Split(Path.PathSeparator);
        return folders.SelectMany(f => Names.Select(n => Path.Combine(f, n))).FirstOrDefault(File.Exists);
    }
}
