using System.Net;
using AngleSharp.Dom;
using Calx.App.Live;
using Calx.App.Tests.Pages.Teachers;
using Calx.Practicals.Definition;
using Calx.Records.Journal;

namespace Calx.App.Tests.Pages.Marking;

/// <summary>A student's page of marking, and the teacher's own marks on it.</summary>
public sealed class OverrulingTests
{
    private static CancellationToken Cancel => TestContext.Current.CancellationToken;

    [Fact]
    public async Task A_students_page_shows_what_was_given_expected_and_found_and_what_may_lie_behind_it()
    {
        await using MarkingScreen screen = await MarkingScreen.Answered();
        IElement answer = (await screen.Page("/students/2")).QuerySelector("#a-massMagnesium")!;
        string text = answer.TextContent;
        Assert.Contains("24.55 g", text, StringComparison.Ordinal);
        Assert.Contains("0.24 g", text, StringComparison.Ordinal);
        Assert.Contains("the mass of the vessel was not taken away", text, StringComparison.Ordinal);
        Assert.Matches(@"\d+ %", answer.QuerySelector(".ideas")!.TextContent);
        Assert.Contains("0 of 1", text, StringComparison.Ordinal);
        Assert.NotEmpty(answer.QuerySelector(".feedback")!.TextContent);
        IDocument ada = await screen.Page("/students/1");
        Assert.Contains("found", ada.QuerySelector("#a-ratio")!.TextContent, StringComparison.Ordinal);
        Assert.Contains("right", ada.QuerySelector("#a-ratio .pairs")!.TextContent, StringComparison.Ordinal);
        Assert.NotNull(ada.QuerySelector($"a[href='{screen.Address}/students/2'][data-key-press=arrowright]"));
    }

    [Fact]
    public async Task The_table_of_all_marks_says_what_waits_and_leads_to_each_student()
    {
        await using MarkingScreen screen = await MarkingScreen.Answered();
        IDocument page = await screen.Page("/students");
        IElement[] rows = [.. page.QuerySelectorAll("table.marks tbody tr")];
        Assert.Equal(["Ada", "Bo", "Cleo"], rows.Select(r => r.QuerySelector("th a")!.TextContent));
        Assert.Equal($"{screen.Address}/students/3", rows[2].QuerySelector("a")!.GetAttribute("href"));
        Assert.Equal(["1", "–", "2"], rows.Select(r => r.QuerySelectorAll("td")[^1].TextContent));
        // Everything is asked where nothing was chosen: five values, two further ones, five judgements, and eight points in words.
        Assert.StartsWith("5 of 20", rows[0].QuerySelectorAll("td")[^2].TextContent, StringComparison.Ordinal);
    }

    [Fact]
    public async Task A_judgement_stands_with_its_question_and_a_choice_in_the_words_that_the_student_read()
    {
        await using MarkingScreen screen = await MarkingScreen.Answered();
        FaultDefinition cause = BuiltInPracticals.Find("magnesium-oxide")!.Faults[0];
        await screen.Class.Answer(1, "cause", cause.Cause);
        await screen.Class.Answer(1, "oddGroup", "2");
        await screen.Class.Answer(1, "formula", "Mg₂O");
        IDocument page = await screen.Page("/students/1");
        Assert.Equal(cause.Label, Given(page, "cause"));
        Assert.Equal("group 2", Given(page, "oddGroup"));
        Assert.Equal("Mg₂O", Given(page, "formula"));
        Assert.Equal("nothing", Given(await screen.Page("/students/2"), "cause"));
        Assert.NotEmpty(page.QuerySelector("#a-cause .ask")!.TextContent);

        static string Given(IDocument page, string id) => page.QuerySelector($"#a-{id} .pairs dd")!.TextContent;
    }

    [Fact]
    public async Task An_overruling_counts_is_kept_with_its_reason_and_stays_when_the_answer_changes()
    {
        await using MarkingScreen screen = await MarkingScreen.Answered();
        IDocument page = await screen.Page("/students/2");
        page = await screen.Send(MarkingScreen.Overrule(page, "massMagnesium"), ("marks", "1"), ("reason", "read the table with me & saw <b>it</b>"));
        Assert.Empty(TeachersScreen.Faults(page));
        IElement answer = page.QuerySelector("#a-massMagnesium")!;
        Assert.Contains("Your marks: 1 of 1 (worked out: 0). read the table with me & saw <b>it</b>", answer.TextContent, StringComparison.Ordinal);
        Assert.Equal("1 of 1", answer.QuerySelector(".got")!.TextContent);
        Assert.Null(answer.QuerySelector("b"));
        JournalEntry kept = Assert.Single(await screen.Marks());
        Assert.Equal(new EntryContent.Mark(1, 1, "read the table with me & saw <b>it</b>"), kept.Content);
        Assert.Equal(new JournalCell(0, 1, "mark.massMagnesium", 2), kept.Cell);
        Assert.Contains("*", (await screen.Page("/students")).QuerySelectorAll("table.marks tbody tr")[1].TextContent, StringComparison.Ordinal);

        JournalEntry first = (await screen.Class.Taught.Journal()).Single(e => e.Cell == new JournalCell(0, 1, "answer.massMagnesium", 2));
        await screen.Class.Answer(2, "massMagnesium", "0.24", "g", replaces: first.Id);
        answer = (await screen.Page("/students/2")).QuerySelector("#a-massMagnesium")!;
        Assert.Contains("The answer has changed since you marked it: it was ‘24.55 g’ then.", answer.TextContent, StringComparison.Ordinal);
        Assert.Equal("1 of 1", answer.QuerySelector(".got")!.TextContent);
        Assert.Contains("24.55 g", answer.QuerySelectorAll(".decided").First(d => d.TextContent.Contains("Answered otherwise too", StringComparison.Ordinal)).TextContent, StringComparison.Ordinal);
    }

    [Fact]
    public async Task A_second_overruling_leaves_the_first_to_be_seen_and_one_that_is_taken_back_counts_no_more()
    {
        await using MarkingScreen screen = await MarkingScreen.Answered();
        IDocument page = await screen.Send(MarkingScreen.Overrule(await screen.Page("/students/2"), "massMagnesium"), ("marks", "1"), ("reason", "first thought"));
        page = await screen.Send(MarkingScreen.Overrule(page, "massMagnesium"), ("marks", "0"), ("reason", "second thought"));
        IElement decided = page.QuerySelector("#a-massMagnesium .decided")!;
        Assert.Equal("1 of 1: first thought", decided.QuerySelector("s")!.TextContent);
        Assert.Contains("0 of 1: second thought", decided.TextContent, StringComparison.Ordinal);

        page = await screen.Send(page.QuerySelector("form[action$='/massMagnesium/back']")!, ("reason", "leave it to the rules"));
        Assert.Empty(TeachersScreen.Faults(page));
        Assert.DoesNotContain("Your marks:", page.QuerySelector("#a-massMagnesium")!.TextContent, StringComparison.Ordinal);
        Assert.Contains("Taken back. leave it to the rules", page.QuerySelector("#a-massMagnesium .decided")!.TextContent, StringComparison.Ordinal);
        Assert.Equal(3, (await screen.Marks()).Count);
        // And then marked by hand again.
        page = await screen.Send(MarkingScreen.Overrule(page, "massMagnesium"), ("marks", "1"), ("reason", "after all"));
        Assert.Contains("Your marks: 1 of 1", page.QuerySelector("#a-massMagnesium")!.TextContent, StringComparison.Ordinal);
    }

    [Fact]
    public async Task A_form_that_is_sent_twice_is_one_mark_and_sent_with_other_marks_keeps_the_first()
    {
        await using MarkingScreen screen = await MarkingScreen.Answered();
        IElement form = MarkingScreen.Overrule(await screen.Page("/students/2"), "massMagnesium");
        await Task.WhenAll(screen.Post(form, ("marks", "1"), ("reason", "seen")), screen.Post(form, ("marks", "1"), ("reason", "seen")));
        Assert.Empty(TeachersScreen.Faults(await screen.Send(form, ("marks", "1"), ("reason", "seen"))));
        Assert.Single(await screen.Marks());
        Assert.Contains("sent before with other marks", TeachersScreen.Faults(await screen.Send(form, ("marks", "0"), ("reason", "seen"))), StringComparison.Ordinal);
        Assert.Equal(1, ((EntryContent.Mark)Assert.Single(await screen.Marks()).Content).Marks);
    }

    [Fact]
    public async Task A_page_that_is_older_than_the_answer_or_the_marks_overrules_nothing()
    {
        await using MarkingScreen screen = await MarkingScreen.Answered();
        IElement old = MarkingScreen.Overrule(await screen.Page("/students/1"), "ratio");
        JournalEntry first = (await screen.Class.Taught.Journal()).Single(e => e.Cell == new JournalCell(0, 1, "answer.ratio", 1));
        await screen.Class.Answer(1, "ratio", "1.01", replaces: first.Id);
        Assert.Contains("has changed since this page was opened", TeachersScreen.Faults(await screen.Send(old, ("marks", "0"), ("reason", "wrong"))), StringComparison.Ordinal);

        old = MarkingScreen.Overrule(await screen.Page("/students/1"), "ratio");
        await screen.Class.Mark(1, "ratio", 1, "by a colleague");
        Assert.Contains("from another page meanwhile", TeachersScreen.Faults(await screen.Send(old, ("marks", "0"), ("reason", "wrong"))), StringComparison.Ordinal);
        Assert.Single(await screen.Marks());
    }

    [Theory]
    [InlineData("marks", "2", "'2' is no mark here")]
    [InlineData("marks", "-1", "'-1' is no mark here")]
    [InlineData("marks", "0.5", "'0.5' is no mark here")]
    [InlineData("marks", "", "'' is no mark here")]
    [InlineData("marks", "99999999999999999999999", "is no mark here")]
    [InlineData("reason", "", "Say why")]
    [InlineData("reason", "  ", "Say why")]
    [InlineData("id", "", "does not come from a form of this page")]
    [InlineData("id", "00000000000000000000000000000000", "does not come from a form of this page")]
    [InlineData("was", "11111111111111111111111111111111", "from another page meanwhile")]
    [InlineData("seen", "x", "has changed since")]
    public async Task What_is_no_mark_is_refused_with_a_sentence_and_nothing_is_kept(string field, string value, string fault)
    {
        await using MarkingScreen screen = await MarkingScreen.Answered();
        IElement form = MarkingScreen.Overrule(await screen.Page("/students/2"), "massMagnesium");
        (string Name, string Value)[] fields = [("marks", "1"), ("reason", "seen")];
        IDocument page = await screen.Send(form, [.. fields.Where(f => f.Name != field), (field, value)]);
        Assert.Contains(fault, TeachersScreen.Faults(page), StringComparison.Ordinal);
        Assert.Empty(await screen.Marks());
    }

    [Fact]
    public async Task A_reason_that_is_too_long_and_a_place_that_does_not_exist_are_refused()
    {
        await using MarkingScreen screen = await MarkingScreen.Answered();
        IElement form = MarkingScreen.Overrule(await screen.Page("/students/2"), "massMagnesium");
        Assert.Contains("at most 200 are kept", TeachersScreen.Faults(await screen.Send(form, ("marks", "1"), ("reason", new string('x', 201)))), StringComparison.Ordinal);
        // A length whose cut would go through a character of two halves.
        Assert.Contains("at most 200 are kept", TeachersScreen.Faults(await screen.Send(form, ("marks", "1"), ("reason", new string('x', 199) + "😀"))), StringComparison.Ordinal);
        foreach (string place in (string[])["/students/99/massMagnesium", "/students/2/nothing", "/students/2/smoke%22%3E", "/students/99/massMagnesium/back"])
        {
            Assert.Equal(HttpStatusCode.NotFound, (await screen.Class.Teacher.PostAsync(screen.Address + place, new FormUrlEncodedContent([new("marks", "1")]), Cancel)).StatusCode);
        }

        Assert.Equal(HttpStatusCode.NotFound, (await screen.Class.Teacher.GetAsync($"{screen.Address}/students/99", Cancel)).StatusCode);
        Assert.Equal(HttpStatusCode.BadRequest, (await screen.Class.Teacher.PostAsync($"{screen.Address}/students/2/massMagnesium", new StringContent("{}"), Cancel)).StatusCode);
        Assert.Empty(await screen.Marks());
    }

    [Fact]
    public async Task Marks_for_an_answer_that_is_asked_no_more_are_kept_and_said()
    {
        await using MarkingScreen screen = await MarkingScreen.Answered();
        await screen.Class.Mark(2, "massMagnesium", 1, "by hand");
        await screen.Class.Write((MarkingSettings.Usual with { Asked = ["ratio"] }).Entry(NewEntryId.Draw(), DateTimeOffset.UnixEpoch));
        IDocument page = await screen.Page("/students");
        Assert.Contains("Marks of yours that do not count now", page.Body!.TextContent, StringComparison.Ordinal);
        Assert.Equal(HttpStatusCode.NotFound, (await screen.Class.Teacher.PostAsync($"{screen.Address}/students/2/massMagnesium", new FormUrlEncodedContent([new("marks", "1")]), Cancel)).StatusCode);
    }
}
