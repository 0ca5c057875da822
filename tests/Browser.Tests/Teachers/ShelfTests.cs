using System.Text.RegularExpressions;

namespace Calx.Browser.Tests.Teachers;

/// <summary>The list of practicals follows the form beside it.</summary>
public sealed class ShelfTests(Chromium chromium)
{
    [Fact]
    public async Task A_wish_narrows_the_list_without_a_button_and_the_address_keeps_it()
    {
        await using Lab lab = await Lab.Over(chromium, null);
        IPage teacher = await lab.Teacher();
        await teacher.GotoAsync("/practicals");
        ILocator titles = teacher.Locator(".shelf h2");
        int all = await titles.CountAsync();
        await teacher.Locator("#happens").SelectOptionAsync("over-time");
        await Expect(titles).ToHaveCountAsync(2);
        await Expect(teacher).ToHaveURLAsync(new Regex("happens=over-time"));
        await Expect(teacher.Locator("#shelf-said")).ToContainTextAsync("2 of ");
        await teacher.Locator("#about").FillAsync("marble");
        await Expect(titles).ToHaveCountAsync(1);
        await teacher.Locator("#minutes").FillAsync("1h");
        await Expect(teacher.Locator("#minutes-fault")).ToContainTextAsync("'1h' is not taken");
        await teacher.ReloadAsync();
        await Expect(titles).ToHaveCountAsync(1);
        await teacher.GetByText("Show all").ClickAsync();
        await Expect(titles).ToHaveCountAsync(all);
        Assert.Equal("/practicals", new Uri(teacher.Url).PathAndQuery);
        lab.NothingAmiss();
    }
}
