using Calx.Browser.Tests.Students;

namespace Calx.Browser.Tests.Everywhere;

/// <summary>Every page, light and dark: axe finds nothing serious, nothing goes to anybody else, nothing is wider than its screen.</summary>
public sealed class AccessibilityTests(Chromium chromium)
{
    [Theory]
    [InlineData(ColorScheme.Light)]
    [InlineData(ColorScheme.Dark)]
    public async Task The_teachers_pages_have_nothing_serious(ColorScheme scheme)
    {
        DemoLab demo = await chromium.Demo();
        Lab lab = demo.Lab;
        IPage page = await lab.Teacher(Screens.Laptop(scheme).ForAxe());
        var found = new List<string>();
        foreach (string address in await EveryPage.OfTeacher(page, demo.Lesson))
        {
            await page.GotoAsync(address);
            // In the dark only the colours differ.
            found.AddRange(await Accessibility.SeriousOn(page, colours: scheme == ColorScheme.Dark));
        }

        Assert.Empty(found);
        lab.NothingAmiss();
    }

    [Theory]
    [InlineData(ColorScheme.Light)]
    [InlineData(ColorScheme.Dark)]
    public async Task The_students_pages_have_nothing_serious(ColorScheme scheme)
    {
        await using Lab lab = await Lab.Open(chromium, new RehearsalSettings { Groups = 3 });
        IPage page = await lab.Page(Screens.Phone(scheme).ForAxe());
        var found = new List<string>();
        await page.GotoAsync("/join");
        found.AddRange(await Accessibility.SeriousOn(page));
        await page.Locator("[name=code]").FillAsync(lab.Lesson.Code);
        await page.Locator("form.join button").ClickAsync();
        await page.Reached("**/groups");
        found.AddRange(await Accessibility.SeriousOn(page));
        await page.Locator("button[name=group][value='1']").ClickAsync();
        await page.Reached("**/table");
        found.AddRange(await Accessibility.SeriousOn(page));
        await page.GoOnToReading();
        found.AddRange(await Accessibility.SeriousOn(page));
        await page.Type("28.1");
        found.AddRange(await Accessibility.SeriousOn(page));
        await page.Locator(".doubt button").First.ClickAsync();
        foreach (string part in (string[])["sent", "seen", "help"])
        {
            await page.Open(part);
            found.AddRange(await Accessibility.SeriousOn(page));
            await NotWiderThanItsScreen(page);
        }

        IPage station = await lab.Station(Screens.Laptop(scheme).ForAxe());
        found.AddRange(await Accessibility.SeriousOn(station));
        await station.Locator("[data-choose='2']").ClickAsync();
        found.AddRange(await Accessibility.SeriousOn(station));
        Assert.Empty(found);
        lab.NothingAmiss();
    }

    [Fact]
    public async Task No_page_on_a_screen_is_wider_than_a_phone()
    {
        DemoLab demo = await chromium.Demo();
        Lab lab = demo.Lab;
        IPage page = await lab.Page(Screens.Phone());
        var found = new List<string>();
        // The slips are sheets of paper, and no page for a phone.
        foreach (string address in (await EveryPage.OfTeacher(page, demo.Lesson)).Where(a => !a.EndsWith("/slips", StringComparison.Ordinal)))
        {
            await page.GotoAsync(address);
            int width = await page.EvaluateAsync<int>("() => document.documentElement.scrollWidth");
            if (width > 360)
            {
                found.Add($"{address} is {width} px wide: {await page.EvaluateAsync<string>(TooWide)}");
            }
        }

        Assert.True(found.Count == 0, string.Join("; ", found));
        lab.NothingAmiss();
    }

    /// <summary>The elements that stand out on the right, the innermost first.</summary>
    private const string TooWide = """
        () => [...document.querySelectorAll("main *")].filter(e => e.getBoundingClientRect().right > 361).reverse().slice(0, 3)
          .map(e => e.outerHTML.slice(0, 90)).join(" | ")
        """;

    private static async Task NotWiderThanItsScreen(IPage page) =>
        Assert.True(await page.EvaluateAsync<bool>("() => document.documentElement.scrollWidth <= window.innerWidth"), page.Url);
}
