using System.Text.RegularExpressions;

namespace Calx.Browser.Tests.Teachers;

/// <summary>What the class sees on the wall, from a lesson that is half-way through.</summary>
public sealed class ProjectorTests(Chromium chromium)
{
    [Fact]
    public async Task The_wall_shows_the_class_and_the_time_left_without_causes_names_or_accepted_values()
    {
        DemoLab demo = await chromium.Demo();
        Lab lab = demo.Lab;
        IPage teacher = await lab.Teacher();
        await teacher.GotoAsync(demo.Live);
        await Expect(teacher.Locator("article.tile")).ToHaveCountAsync(12);
        await Pictures.Keep(teacher, "teacher-live");
        await teacher.Keyboard.PressAsync("p");
        await teacher.Reached("**/projector");
        await teacher.SetViewportSizeAsync(1920, 1080);
        await Expect(teacher.Locator(".left")).ToHaveTextAsync(new Regex("^[0-9]+$"));
        await Pictures.Keep(teacher, "projector");

        // The height is used: the chart reaches down to the buttons, and nothing lies below the screen.
        Assert.True(await teacher.EvaluateAsync<double>("() => document.querySelector('.screen .chart').getBoundingClientRect().height") >= 0.75 * 1080);
        Assert.True(await teacher.EvaluateAsync<bool>("() => document.documentElement.scrollHeight <= window.innerHeight"));

        string wall = await teacher.Locator(".screen").InnerTextAsync();
        Assert.DoesNotMatch(new Regex("Ada|Cleo|theory|accepted|smoke|tarnish|odd result|paper record", RegexOptions.IgnoreCase), wall);
        // It must be read from the back row: no text of the screen itself below 20 px, and nothing beside it.
        Assert.True(await teacher.EvaluateAsync<bool>("() => document.documentElement.scrollWidth <= window.innerWidth"));
        Assert.True(await teacher.EvaluateAsync<bool>(
            "() => [...document.querySelectorAll('.screen p, .screen li')].every(e => parseFloat(getComputedStyle(e).fontSize) >= 20)"));
        lab.NothingAmiss();
    }

    [Fact]
    public async Task The_findings_show_causes_only_on_demand()
    {
        DemoLab demo = await chromium.Demo();
        Lab lab = demo.Lab;
        IPage teacher = await lab.Teacher();
        await teacher.GotoAsync($"{demo.Lesson}/findings");
        await Pictures.Keep(teacher, "teacher-findings");
        string before = await teacher.Locator("main").InnerTextAsync();
        await teacher.GetByRole(AriaRole.Link, new() { Name = "Show causes" }).ClickAsync();
        await Expect(teacher.GetByRole(AriaRole.Link, new() { Name = "Hide causes" })).ToBeVisibleAsync();
        string after = await teacher.Locator("main").InnerTextAsync();
        Assert.True(after.Length > before.Length);
        await Pictures.Keep(teacher, "teacher-findings-causes");
        lab.NothingAmiss();
    }
}
