namespace Calx.Browser.Tests.Teachers;

/// <summary>The marking of a lesson's answers: answers in words by keyboard alone, and how its pages look.</summary>
public sealed class MarkingTests(Chromium chromium)
{
    private static readonly string[] Names = ["Ada", "Bo", "Cleo", "Dev", "Esme", "Finn", "Gwen", "Hari"];

    [Fact]
    public async Task Answers_in_words_are_marked_one_after_the_other_with_the_keyboard_alone()
    {
        (Lab opened, string marking) = await Open();
        await using Lab lab = opened;
        IPage teacher = await lab.Teacher();
        await teacher.GotoAsync($"{marking}/comments");
        await teacher.Locator("[name='text.a']").FillAsync("Name the reading.");
        await teacher.Keyboard.PressAsync("Enter");
        await Expect(teacher.Locator(".done")).ToContainTextAsync("Kept.");

        await teacher.GotoAsync($"{marking}/words");
        await Pictures.Keep(teacher, "teacher-words");
        string first = await teacher.Locator(".prose").InnerTextAsync();
        // A comment by its key, words of one's own, and a digit among them that is no mark.
        await teacher.Keyboard.PressAsync("a");
        await Expect(teacher.Locator("#reason")).ToHaveValueAsync("Name the reading.");
        await teacher.Keyboard.PressAsync("t");
        await teacher.Keyboard.TypeAsync(" Say by how much, in 1 sentence.");
        await teacher.Keyboard.PressAsync("Escape");
        await Expect(teacher.Locator("#reason")).Not.ToBeFocusedAsync();
        await teacher.Keyboard.PressAsync("0");
        await Expect(teacher.Locator(".done")).ToContainTextAsync("Kept: 0 of 1.");
        await Expect(teacher.Locator(".prose")).Not.ToHaveTextAsync(first);
        await Expect(teacher.Locator("#reason")).ToHaveValueAsync("");

        // Passed over, then marked; and back to the last one.
        await teacher.Keyboard.PressAsync("n");
        await teacher.Reached("**/words?after=*");
        await teacher.Keyboard.PressAsync("1");
        await Expect(teacher.Locator(".done")).ToContainTextAsync("Kept: 1 of 1.");
        await teacher.Keyboard.PressAsync("p");
        await teacher.Reached("**/words?at=*");
        await Expect(teacher.Locator("button[aria-pressed=true]")).ToHaveAttributeAsync("value", "1");
        await teacher.Keyboard.PressAsync("w");
        await Expect(teacher.Locator(".whose a")).ToBeVisibleAsync();
        await teacher.Keyboard.PressAsync("0");
        await Expect(teacher.Locator(".done")).ToContainTextAsync("Kept: 0 of 1.");

        await teacher.GotoAsync(marking);
        await Pictures.Keep(teacher, "teacher-marking");
        await teacher.GotoAsync($"{marking}/students/1");
        await Expect(teacher.Locator("#a-conserved .feedback")).ToContainTextAsync("Name the reading. Say by how much, in 1 sentence.");
        lab.NothingAmiss();
    }

    [Fact]
    public async Task A_key_that_is_held_down_marks_one_answer_only()
    {
        (Lab opened, string marking) = await Open();
        await using Lab lab = opened;
        IPage teacher = await lab.Teacher();
        await teacher.GotoAsync($"{marking}/words");
        await teacher.Keyboard.DownAsync("1");
        await Expect(teacher.Locator(".done")).ToContainTextAsync("Kept: 1 of 1.");
        string second = await teacher.Locator(".prose").InnerTextAsync();
        await teacher.Keyboard.DownAsync("1");
        await teacher.Keyboard.DownAsync("1");
        await teacher.Keyboard.UpAsync("1");
        await teacher.ReloadAsync();
        await Expect(teacher.Locator(".prose")).ToHaveTextAsync(second, new() { UseInnerText = true });
        lab.NothingAmiss();
    }

    [Theory]
    [InlineData(ColorScheme.Light)]
    [InlineData(ColorScheme.Dark)]
    public async Task The_pages_have_no_serious_fault_of_accessibility_and_fit_a_phone(ColorScheme scheme)
    {
        (Lab opened, string marking) = await Open();
        await using Lab lab = opened;
        IPage laptop = await lab.Page(Screens.Laptop(scheme).ForAxe()), phone = await lab.Page(Screens.Phone(scheme));
        List<string> found = [];
        foreach (string place in (string[])["", "?names=yes", "/students", "/students/1", "/students/7", "/words", "/words?at=conserved:1", "/comments", "/look", "/settings"])
        {
            await laptop.GotoAsync($"{marking}{place}");
            found.AddRange(await Accessibility.SeriousOn(laptop));
            await phone.GotoAsync($"{marking}{place}");
            int width = await phone.EvaluateAsync<int>("() => document.documentElement.scrollWidth");
            if (width > 360)
            {
                found.Add($"{place} is {width} px wide");
            }
        }

        Assert.True(found.Count == 0, string.Join("; ", found));
        lab.NothingAmiss();
    }

    private async Task<(Lab Lab, string Marking)> Open()
    {
        string marking = "";
        Lab lab = await Lab.Over(chromium, async folder =>
        {
            RehearsedLesson lesson = await RehearsedLesson.Write(folder, new RehearsalSettings { Groups = 4, Names = Names });
            await RehearsedAnswers.Write(folder, lesson.Id, Names.Length);
            marking = $"/lessons/{lesson.Id}/marking";
        });
        return (lab, marking);
    }
}
