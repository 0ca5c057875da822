namespace Calx.Browser.Tests.Teachers;

/// <summary>What past lessons teach, with every number open.</summary>
public sealed class LearnedTests(Chromium chromium)
{
    [Fact]
    public async Task All_numbers_are_read_and_ticked_on_a_phone()
    {
        DemoLab demo = await chromium.Demo();
        IPage page = await demo.Lab.Page(Screens.Phone().ForAxe());
        await page.GotoAsync("/practicals/magnesium-oxide/learned");
        await page.Locator(".learned summary").First.ClickAsync();
        ILocator cool = page.Locator("input[name=number][value='time:cool']");
        await page.Locator("label", new() { Has = cool }).ClickAsync();
        Assert.True(await cool.IsCheckedAsync());
        Assert.True(await page.Locator("input[name=number]").CountAsync() > 10);
        Assert.Empty(await Accessibility.SeriousOn(page));
        Assert.True(await page.EvaluateAsync<bool>("() => document.documentElement.scrollWidth <= window.innerWidth"));
    }
}
