using System.Collections.Concurrent;

namespace Calx.Browser.Tests;

/// <summary>
/// A lab with the real program and the browsers of teacher and class. It listens to every page: a message of error on a
/// console (such as one of the content policy) and a request to anybody else are found at the end.
/// </summary>
internal sealed class Lab : IAsyncDisposable
{
    private readonly IBrowser browser;
    private readonly ScratchFolder folder;
    private readonly List<IBrowserContext> contexts = [];
    private readonly ConcurrentQueue<string> amiss = new();

    private Lab(IBrowser browser, ScratchFolder folder, RunningProgram program, RehearsedLesson lesson) =>
        (this.browser, this.folder, Program, Lesson) = (browser, folder, program, lesson);

    /// <summary>The program.</summary>
    public RunningProgram Program { get; }

    /// <summary>A lesson that has just begun; of a lab without one, nothing.</summary>
    public RehearsedLesson Lesson { get; }

    /// <summary>Address of the lesson's pages for the teacher.</summary>
    public string LessonPath => $"/lessons/{Lesson.Id}";

    /// <summary>Where the records are.</summary>
    public string DataFolder => folder.FullName;

    /// <summary>Address under which the pages are opened.</summary>
    public Uri Address { get; private set; } = null!;

    /// <summary>Requests that the pages sent.</summary>
    public int Requests { get; private set; }

    /// <summary>Opens one with a lesson in its records.</summary>
    public static async Task<Lab> Open(Chromium chromium, RehearsalSettings? settings = null, params string[] words)
    {
        IBrowser browser = chromium.Needed();
        var folder = new ScratchFolder();
        RehearsedLesson lesson = await RehearsedLesson.Write(folder.FullName, settings);
        RunningProgram program = await RunningProgram.Start(new ProgramStart(folder.FullName) { Words = words });
        return new Lab(browser, folder, program, lesson) { Address = program.Address };
    }

    /// <summary>Opens one over records that are written first; null leaves them empty.</summary>
    public static async Task<Lab> Over(Chromium chromium, Func<string, Task>? write, params string[] words)
    {
        IBrowser browser = chromium.Needed();
        var folder = new ScratchFolder();
        if (write is not null)
        {
            await write(folder.FullName);
        }

        RunningProgram program = await RunningProgram.Start(new ProgramStart(folder.FullName) { Words = words });
        return new Lab(browser, folder, program, new RehearsedLesson(default, "", "", 0)) { Address = program.Address };
    }

    /// <summary>Opens the pages under another of the machine's addresses from now on.</summary>
    public void MoveTo(string host) => Address = new UriBuilder(Program.Address) { Host = host }.Uri;

    /// <summary>A browser of the teacher's.</summary>
    public Task<IPage> Teacher(BrowserNewContextOptions? options = null) => Page(options ?? Screens.Laptop());

    /// <summary>A student's phone that has joined and taken a group.</summary>
    public async Task<IPage> Phone(int group, BrowserNewContextOptions? options = null, string? code = null)
    {
        IPage page = await Page(options ?? Screens.Phone());
        await KeepWhatIsAskedAbout(page);
        await page.GotoAsync("/join");
        await page.Locator("[name=code]").FillAsync(code ?? Lesson.Code);
        await page.Locator("form.join button").ClickAsync();
        await page.Locator($"button[name=group][value='{group}']").ClickAsync();
        await page.Reached("**/table");
        return page;
    }

    /// <summary>The laptop at a balance.</summary>
    public async Task<IPage> Station(BrowserNewContextOptions? options = null)
    {
        IPage page = await Page(options ?? Screens.Laptop());
        await KeepWhatIsAskedAbout(page);
        await page.GotoAsync("/join");
        await page.Locator("[name=code]").FillAsync(Lesson.StationCode);
        await page.Locator("form.join button").ClickAsync();
        await page.Reached("**/table");
        return page;
    }

    /// <summary>Any reading may be asked about once, one in ten by chance: the group looks, and it is right.</summary>
    private static Task KeepWhatIsAskedAbout(IPage page) => page.AddLocatorHandlerAsync(
        page.Locator("#ask:not(.hidden)"),
        // Not by the mouse: a STOP that fills the screen at this moment lies over the question.
        ask => ask.GetByRole(AriaRole.Button, new() { Name = "It is right" }).DispatchEventAsync("click"),
        // The next reading may be asked about too: then the question never goes, and each is answered in turn.
        new() { NoWaitAfter = true });

    /// <summary>A page in a browser of its own.</summary>
    public async Task<IPage> Page(BrowserNewContextOptions options)
    {
        options.BaseURL = Address.ToString();
        IBrowserContext context = await browser.NewContextAsync(options);
        context.SetDefaultTimeout(Chromium.PatienceInMilliseconds);
        contexts.Add(context);
        context.Console += (_, message) =>
        {
            // That a request failed is no error of the page: some tests cut the connection, and refusals are answers too.
            if (message.Type == "error" && !message.Text.StartsWith("Failed to load resource", StringComparison.Ordinal))
            {
                amiss.Enqueue($"console of {message.Page?.Url}: {message.Text}");
            }
        };
        context.WebError += (_, error) => amiss.Enqueue($"script of {error.Page?.Url}: {error.Error}");
        context.Request += (_, request) => Hear(request);
        context.Response += (_, response) =>
        {
            if (response.Status >= 500)
            {
                amiss.Enqueue($"{response.Status} {response.Url}");
            }
        };
        return await context.NewPageAsync();
    }

    /// <summary>Fails where a page wrote an error, asked anybody else for anything, or was answered with a fault of the program.</summary>
    public void NothingAmiss() => Assert.Empty(amiss);

    /// <summary>Closes every page: a live page that stays open asks for news as long as it is there.</summary>
    public async Task CloseBrowsers()
    {
        foreach (IBrowserContext context in contexts)
        {
            await context.CloseAsync();
        }

        contexts.Clear();
    }

    public async ValueTask DisposeAsync()
    {
        await CloseBrowsers();
        await Program.DisposeAsync();
        folder.Dispose();
    }

    private void Hear(IRequest request)
    {
        Requests++;
        var asked = new Uri(request.Url);
        if (asked.Scheme is "http" or "https" or "ws" or "wss" && asked.Authority != Address.Authority)
        {
            amiss.Enqueue($"a request to {asked}");
        }
    }
}
