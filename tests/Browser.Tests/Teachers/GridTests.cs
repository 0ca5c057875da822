namespace Calx.Browser.Tests.Teachers;

/// <summary>The teacher's laptop does the lesson alone: readings from paper slips go into the table by keyboard.</summary>
public sealed class GridTests(Chromium chromium)
{
    [Fact]
    public async Task Readings_from_paper_slips_are_typed_with_the_keyboard_alone()
    {
        await using Lab lab = await Lab.Open(chromium, new RehearsalSettings { Groups = 3 });
        IPage teacher = await lab.Teacher();
        await teacher.GotoAsync($"{lab.LessonPath}/slips");
        await Expect(teacher.Locator("body")).ToContainTextAsync("crucible");
        await Pictures.Keep(teacher, "teacher-slips");

        await teacher.GotoAsync($"{lab.LessonPath}/live");
        await teacher.Keyboard.PressAsync("r");
        await teacher.Reached("**/grid");
        ILocator first = teacher.Locator("input[data-what=empty][data-group='1']");
        for (int i = 0; i < 60 && !await first.EvaluateAsync<bool>("e => e === document.activeElement"); i++)
        {
            await teacher.Keyboard.PressAsync("Tab");
        }

        foreach (string written in (string[])["28.10", "31.42", "26.05"])
        {
            await teacher.Keyboard.TypeAsync(written);
            await teacher.Keyboard.PressAsync("Enter");
            await Expect(teacher.Locator("[data-grid-said]")).ToContainTextAsync($"{written} kept");
        }

        await Expect(teacher.Locator("input.kept")).ToHaveCountAsync(3);
        await Pictures.Keep(teacher, "teacher-grid");
        await teacher.ReloadAsync();
        await Expect(first).ToHaveValueAsync("28.10");
        await Expect(teacher.Locator("input[data-what=empty][data-group='3']")).ToHaveValueAsync("26.05");
        lab.NothingAmiss();
    }

    [Fact]
    public async Task Other_decimals_than_the_balances_are_asked_about_and_one_more_press_keeps_them()
    {
        await using Lab lab = await Lab.Open(chromium, new RehearsalSettings { Groups = 2 });
        IPage teacher = await lab.Teacher();
        await teacher.GotoAsync($"{lab.LessonPath}/grid");
        await teacher.Locator("[name='b.1']").FillAsync("A");
        ILocator cell = teacher.Locator("input[data-what=empty][data-group='1']"), fault = teacher.Locator("[data-grid-fault]");
        await cell.FocusAsync();
        await teacher.Keyboard.TypeAsync("28.0");
        await teacher.Keyboard.PressAsync("Enter");
        await Expect(fault).ToContainTextAsync("balance A shows two decimals: 28.00?");
        await Expect(teacher.Locator("input.kept")).ToHaveCountAsync(0);
        await teacher.Keyboard.PressAsync("Enter");
        await Expect(teacher.Locator("[data-grid-said]")).ToContainTextAsync("28.0 kept");
        await Expect(fault).ToBeHiddenAsync();
        lab.NothingAmiss();
    }

    [Fact]
    public async Task A_kept_reading_is_changed_by_keyboard_only_with_a_reason()
    {
        await using Lab lab = await Lab.Open(chromium, new RehearsalSettings { Groups = 2 });
        IPage teacher = await lab.Teacher();
        await teacher.GotoAsync($"{lab.LessonPath}/grid");
        ILocator cell = teacher.Locator("input[data-what=empty][data-group='1']");
        await cell.FocusAsync();
        await teacher.Keyboard.TypeAsync("28.10");
        await teacher.Keyboard.PressAsync("Enter");
        await Expect(cell).ToHaveClassAsync(new System.Text.RegularExpressions.Regex("kept"));
        await teacher.Keyboard.PressAsync("ArrowUp");
        await teacher.Keyboard.TypeAsync("28.01");
        await teacher.Keyboard.PressAsync("Enter");
        await Expect(teacher.Locator("[data-grid-fault]")).ToContainTextAsync("Give the reason");
        await Expect(teacher.Locator("#reason")).ToBeFocusedAsync();
        await teacher.Keyboard.TypeAsync("the paper record says so");
        await teacher.Keyboard.PressAsync("Enter");
        await Expect(teacher.Locator("[data-grid-said]")).ToContainTextAsync("28.01 kept");
        await teacher.GotoAsync($"{lab.LessonPath}/groups/1/cells/1/empty");
        await Expect(teacher.Locator("table s")).ToHaveTextAsync("28.10");
        lab.NothingAmiss();
    }
}
