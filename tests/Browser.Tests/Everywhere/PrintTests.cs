using Calx.Browser.Tests.Students;

namespace Calx.Browser.Tests.Everywhere;

/// <summary>Every page as it comes out of a printer: black on white whatever the screen was, nothing to press, as wide as the paper.</summary>
public sealed class PrintTests(Chromium chromium)
{
    /// <summary>The width that A4 leaves between margins of 10 mm, in CSS pixels.</summary>
    private const int PaperWidth = 718;

    /// <summary>What is wrong with a page on paper, in words.</summary>
    private const string Amiss = """
        () => {
          const visible = e => e.checkVisibility({ visibilityProperty: true }) && e.getClientRects().length > 0;
          const found = [...document.querySelectorAll("button, input:not([type=hidden]), select, textarea, nav")].filter(visible)
            .map(e => `${e.outerHTML.slice(0, 80)} is printed`);
          const light = colour => { const [r, g, b] = colour.match(/[\d.]+/g).map(Number); return 0.2126 * r + 0.7152 * g + 0.0722 * b; };
          const paper = getComputedStyle(document.body).backgroundColor, clear = "rgba(0, 0, 0, 0)";
          const html = getComputedStyle(document.documentElement).backgroundColor;
          for (const colour of [paper, html]) if (colour !== clear && light(colour) < 250) found.push(`the paper is ${colour}`);
          for (const e of document.querySelectorAll("main h1, main p, main td")) {
            if (visible(e) && e.closest(".fill, .stop") === null && light(getComputedStyle(e).color) > 140) { found.push(`${e.outerHTML.slice(0, 80)} is pale`); break; }
          }
          if (![...document.querySelectorAll("h1")].some(visible)) found.push("no heading is printed");
          if (document.documentElement.scrollWidth > window.innerWidth) found.push(`it is ${document.documentElement.scrollWidth} px wide`);
          return found;
        }
        """;

    [Fact]
    public async Task The_teachers_pages_print_black_on_white_without_anything_to_press()
    {
        DemoLab demo = await chromium.Demo();
        IPage page = await demo.Lab.Page(Screens.Laptop(ColorScheme.Dark));
        IReadOnlyList<string> all = await EveryPage.OfTeacher(page, demo.Lesson);
        await OnPaper(page);
        var found = new List<string>();

        // Slips are sheets of their own measure and the projector is no page for paper; both have tests of their own.
        foreach (string address in all.Where(a => !a.EndsWith("/slips", StringComparison.Ordinal) && !a.EndsWith("/projector", StringComparison.Ordinal)))
        {
            await page.GotoAsync(address);
            found.AddRange((await page.EvaluateAsync<string[]>(Amiss)).Select(f => $"{address}: {f}"));
        }

        Assert.True(found.Count == 0, string.Join(Environment.NewLine, found));
    }

    [Fact]
    public async Task Findings_and_plan_have_a_button_that_prints_them()
    {
        DemoLab demo = await chromium.Demo();
        IPage page = await demo.Lab.Page(Screens.Laptop());
        await page.AddInitScriptAsync("window.print = () => { window.printed = (window.printed ?? 0) + 1; };");
        foreach (string address in (string[])[$"{demo.Lesson}/findings", "/practicals/magnesium-oxide"])
        {
            await page.GotoAsync(address);
            await page.Locator("[data-print]").ClickAsync();
            Assert.Equal(1, await page.EvaluateAsync<int>("() => window.printed"));
        }
    }

    [Fact]
    public async Task A_groups_page_prints_what_was_sent()
    {
        await using Lab lab = await Lab.Open(chromium, new RehearsalSettings { Groups = 3 });
        IPage phone = await lab.Phone(group: 1);
        await phone.GoOnToReading();
        await phone.Type("28.10");
        await phone.Open("sent");
        await Expect(phone.Locator("#sent .value").First).ToHaveTextAsync("28.10");
        await OnPaper(phone);
        Assert.Empty(await phone.EvaluateAsync<string[]>(Amiss));
        await Expect(phone.Locator("#sent")).ToBeVisibleAsync();
        await Expect(phone.Locator("#stage")).ToBeHiddenAsync();
    }

    private static async Task OnPaper(IPage page)
    {
        await page.EmulateMediaAsync(new() { Media = Media.Print });
        await page.SetViewportSizeAsync(PaperWidth, 1000);
    }
}
