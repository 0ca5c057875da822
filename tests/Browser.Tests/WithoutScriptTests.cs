namespace Calx.Browser.Tests;

/// <summary>Pages without script: they read, and their forms work.</summary>
public sealed class WithoutScriptTests(Chromium chromium)
{
    [Fact]
    public async Task A_reading_is_typed_and_read_without_script()
    {
        await using Lab lab = await Lab.Open(chromium, new RehearsalSettings { Groups = 2 });
        BrowserNewContextOptions without = Screens.Phone();
        without.JavaScriptEnabled = false;
        IPage phone = await lab.Phone(group: 1, without);
        for (int i = 0; i < 12 && !await phone.Locator("#now [name=written]").First.IsVisibleAsync(); i++)
        {
            await phone.Locator("#now form:has([name=what][value='at-step']) button:visible").First.ClickAsync();
        }

        await phone.Locator("#now .letters label:has(input[value='A'])").First.ClickAsync();
        await phone.Locator("#now [name=written]").First.FillAsync("28.1");
        await phone.Locator("#now form.typing button").First.ClickAsync();
        await phone.Locator(".typed button").ClickAsync();
        await Expect(phone.Locator("#sent .value").First).ToContainTextAsync("28.10");

        BrowserNewContextOptions laptop = Screens.Laptop();
        laptop.JavaScriptEnabled = false;
        IPage teacher = await lab.Teacher(laptop);
        await teacher.GotoAsync($"{lab.LessonPath}/live");
        await Expect(teacher.Locator("article[aria-labelledby=t1]")).ToContainTextAsync("28.10");
        await teacher.GotoAsync($"{lab.LessonPath}/grid");
        await teacher.Locator("input[data-what=empty][data-group='2']").FillAsync("31.42");
        await teacher.GetByRole(AriaRole.Button, new() { Name = "Keep all that is new" }).ClickAsync();
        await Expect(teacher.Locator("input[data-what=empty][data-group='2']")).ToHaveValueAsync("31.42");
        await teacher.GotoAsync($"{lab.LessonPath}/live");
        await teacher.GetByRole(AriaRole.Button, new() { Name = "STOP" }).ClickAsync();
        await Expect(teacher.Locator("h1")).ToContainTextAsync("Stopped");
        await phone.ReloadAsync();
        await Expect(phone.Locator(".fill.stop")).ToContainTextAsync("Gas off.");
        lab.NothingAmiss();
    }
}
