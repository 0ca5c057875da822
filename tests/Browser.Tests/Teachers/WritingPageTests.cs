namespace Calx.Browser.Tests.Teachers;

/// <summary>A practical of one's own is written: answers write the file, and what is found leads to its line.</summary>
public sealed class WritingPageTests(Chromium chromium)
{
    [Fact]
    public async Task Answers_write_the_file_until_it_is_changed_by_hand_and_a_finding_leads_to_its_line()
    {
        await using Lab lab = await Lab.Over(chromium, null);
        IPage teacher = await lab.Teacher();
        await teacher.GotoAsync("/practicals/new");
        ILocator file = teacher.Locator("#text");
        await teacher.Locator("#f-answer-equation").FillAsync("Mg + O2 -> MgO");
        await Expect(file).ToHaveValueAsync(new System.Text.RegularExpressions.Regex("2Mg \\+ O2 -> 2MgO"));

        string text = await file.InputValueAsync();
        await file.FillAsync(text.Replace("'2Mg + O2 -> 2MgO'", "Mg + O2 -> MgO", StringComparison.Ordinal));
        ILocator found = teacher.Locator(".findings li.wrong a");
        await Expect(found).ToHaveCountAsync(1);
        await Expect(teacher.Locator(".findings li.wrong")).ToContainTextAsync("Did you mean 2Mg + O2 -> 2MgO?");
        await teacher.Locator("#f-answer-usual").FillAsync("0.5");
        await Expect(teacher.Locator("#writing-said")).ToContainTextAsync("by hand");

        await found.PressAsync("Enter");
        Assert.Equal("Mg + O2 -> MgO", await file.EvaluateAsync<string>("f => f.value.slice(f.selectionStart, f.selectionEnd)"));
        await Pictures.Keep(teacher, "teacher-writing");
        lab.NothingAmiss();
    }

    [Fact]
    public async Task An_answer_that_turns_wrong_after_the_file_was_written_from_it_is_not_saved()
    {
        await using Lab lab = await Lab.Over(chromium, null);
        IPage teacher = await lab.Teacher();
        await teacher.GotoAsync("/practicals/new");
        ILocator equation = teacher.Locator("#f-answer-equation");
        await equation.FillAsync("MgCO3 -> MgO + CO2");
        await Expect(teacher.Locator("#text")).ToHaveValueAsync(new System.Text.RegularExpressions.Regex("practical: heating-mgco3"));
        await Expect(teacher.Locator("#f-answer-title")).ToHaveAttributeAsync("placeholder", "Heating MgCO3");
        await Expect(equation).ToBeFocusedAsync();

        await equation.FillAsync("MgCO3 MgO + CO2");
        await Expect(teacher.Locator("[data-fault='answer.equation']")).Not.ToBeEmptyAsync();
        await teacher.GetByRole(AriaRole.Button, new() { Name = "Save" }).PressAsync("Enter");
        await Expect(teacher.GetByRole(AriaRole.Alert)).ToContainTextAsync("The equation:");
    }

    [Theory]
    [InlineData(ColorScheme.Light)]
    [InlineData(ColorScheme.Dark)]
    public async Task A_saved_file_is_edited_on_a_page_that_has_nothing_serious_and_fits_every_screen(ColorScheme scheme)
    {
        await using Lab lab = await Lab.Over(chromium, null);
        IPage teacher = await lab.Teacher(Screens.Laptop(scheme).ForAxe());
        await teacher.GotoAsync("/practicals/new");
        Assert.Empty(await Accessibility.SeriousOn(teacher));
        await teacher.GetByRole(AriaRole.Button, new() { Name = "Save" }).PressAsync("Enter");
        await Expect(teacher.GetByText("Saved as version 1.")).ToBeVisibleAsync();
        Assert.Empty(await Accessibility.SeriousOn(teacher));
        foreach (int width in (int[])[1280, 768, 360])
        {
            await teacher.SetViewportSizeAsync(width, 800);
            Assert.True(await teacher.EvaluateAsync<int>("() => document.documentElement.scrollWidth") <= width, $"wider than {width} px");
        }

        lab.NothingAmiss();
    }
}
