namespace Calx.Browser.Tests.Teachers;

/// <summary>Papers of a lesson as they look in a browser, on a phone and on a laptop.</summary>
public sealed class PaperPagesTests(Chromium chromium)
{
    [Fact]
    public async Task Report_and_display_fit_the_screen_and_the_papers_page_lists_their_pictures()
    {
        DemoLab demo = await chromium.Demo();
        IPage teacher = await demo.Lab.Teacher();
        foreach (string page in (string[])["papers", "papers/class-report.html", "papers/wall-display.html?accepted=yes"])
        {
            foreach (int width in (int[])[360, 1280])
            {
                await teacher.SetViewportSizeAsync(width, 800);
                await teacher.GotoAsync($"{demo.Lesson}/{page}");
                Assert.True(await teacher.EvaluateAsync<bool>("() => document.documentElement.scrollWidth <= window.innerWidth"), $"{page} at {width}");
            }
        }

        await teacher.GotoAsync($"{demo.Lesson}/papers");
        await Expect(teacher.GetByRole(AriaRole.Link, new() { Name = "PNG of" })).ToHaveCountAsync(7);
        await teacher.SetViewportSizeAsync(820, 900);
        await teacher.GotoAsync($"{demo.Lesson}/papers/class-report.html");
        await Pictures.Keep(teacher, "class-report");
        demo.Lab.NothingAmiss();
    }
}
