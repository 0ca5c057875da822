using System.Net;
using AngleSharp.Dom;
using Calx.App.Tests.Pages.Teachers;
using Calx.Records.Journal;

namespace Calx.App.Tests.Pages.Marking;

/// <summary>Answers in words, one at a time, without script.</summary>
public sealed class WordsTests
{
    [Fact]
    public async Task The_next_one_comes_by_itself_question_by_question_until_all_are_marked()
    {
        await using MarkingScreen screen = await MarkingScreen.Answered();
        IDocument page = await screen.Page("/words");
        Assert.Equal("A friend says that mass was made out of nothing. What do you answer?", page.QuerySelector(".ask")!.TextContent);
        Assert.Contains("oxygen was there before", page.QuerySelector(".prose")!.TextContent, StringComparison.Ordinal);
        Assert.Contains("nothing was made", page.QuerySelector(".points")!.TextContent, StringComparison.Ordinal);
        Assert.Equal(["0", "1"], page.QuerySelectorAll("button[name=marks]").Select(b => b.GetAttribute("data-key-press")));

        page = await screen.Send(Giving(page), ("marks", "1"));
        Assert.Contains("human error", page.QuerySelector(".prose")!.TextContent, StringComparison.Ordinal);
        page = await screen.Send(Giving(page), ("marks", "0"), ("reason", "Which reading would be wrong, and how?"));
        Assert.Contains("more decimals", page.QuerySelector(".prose")!.TextContent, StringComparison.Ordinal);
        page = await screen.Send(Giving(page), ("marks", "2"));
        Assert.Contains("Every answer in words is marked.", page.Body!.TextContent, StringComparison.Ordinal);

        JournalEntry[] marks = [.. await screen.Marks()];
        Assert.Equal([("mark.conserved", 1), ("mark.conserved", 3), ("mark.better", 3)], marks.Select(m => (m.Cell.What, m.Cell.Member)));
        Assert.Equal(new EntryContent.Mark(0, 1, "Which reading would be wrong, and how?"), marks[1].Content);
        Assert.Contains("Which reading would be wrong, and how?", (await screen.Page("/students/3")).QuerySelector("#a-conserved")!.TextContent, StringComparison.Ordinal);
    }

    [Fact]
    public async Task Words_of_measurement_are_underlined_and_misused_ones_have_a_number_and_advice_in_words()
    {
        await using MarkingScreen screen = await MarkingScreen.Answered();
        IDocument page = await screen.Page("/words?at=conserved:3");
        IElement misused = page.QuerySelector(".prose u.misused")!;
        Assert.Contains("human error", misused.TextContent, StringComparison.Ordinal);
        Assert.NotNull(misused.QuerySelector("sup"));
        Assert.NotEmpty(page.QuerySelectorAll(".advice li"));
        Assert.Contains("mass", (await screen.Page("/words?at=conserved:1")).QuerySelectorAll(".prose u.found").Select(u => u.TextContent.Trim()));
    }

    [Fact]
    public async Task One_that_is_passed_over_comes_again_and_one_that_was_marked_is_marked_again()
    {
        await using MarkingScreen screen = await MarkingScreen.Answered();
        IDocument page = await screen.Page((await screen.Page("/words")).QuerySelector("a[data-key-press=n]")!.GetAttribute("href")!);
        page = await screen.Send(Giving(page), ("marks", "1"));
        page = await screen.Send(Giving(page), ("marks", "1"));
        Assert.Contains("One that you passed over is left.", page.Body!.TextContent, StringComparison.Ordinal);
        string back = page.QuerySelector("a[data-key-press=p]")!.GetAttribute("href")!;
        page = await screen.Page(back);
        Assert.Contains("more decimals", page.QuerySelector(".prose")!.TextContent, StringComparison.Ordinal);
        Assert.Equal("1", page.QuerySelector("button[aria-pressed=true]")!.GetAttribute("value"));
        await screen.Send(Giving(page), ("marks", "2"));
        JournalEntry again = (await screen.Marks())[^1];
        Assert.Equal(("marked again", 2m), (again.Reason, ((EntryContent.Mark)again.Content).Marks));
        Assert.Contains("oxygen was there before", (await screen.Page("/words")).QuerySelector(".prose")!.TextContent, StringComparison.Ordinal);
    }

    [Fact]
    public async Task An_answer_that_was_changed_after_it_was_marked_comes_again()
    {
        await using MarkingScreen screen = await MarkingScreen.Answered();
        await screen.Send(Giving(await screen.Page("/words?at=better:3")), ("marks", "1"));
        JournalEntry first = (await screen.Class.Taught.Journal()).Single(e => e.Cell == new JournalCell(0, 1, "answer.better", 3));
        await screen.Class.Answer(3, "better", "Take more magnesium, so that the uncertainty is a smaller share.", replaces: first.Id);
        IDocument page = await screen.Page("/words?only=better");
        Assert.Contains("It has changed since you marked it: it was ‘Use a balance with more decimals.’ then, with 1 of 2.", page.QuerySelector(".fault")!.TextContent, StringComparison.Ordinal);
        page = await screen.Send(Giving(page), ("marks", "2"));
        Assert.Contains("Every answer in words is marked.", (await screen.Page("/words?only=better")).Body!.TextContent, StringComparison.Ordinal);
    }

    [Fact]
    public async Task An_answer_that_changes_while_it_is_marked_is_shown_as_it_is_now_with_the_comment_that_was_typed()
    {
        await using MarkingScreen screen = await MarkingScreen.Answered();
        IElement form = Giving(await screen.Page("/words?at=better:3"));
        JournalEntry first = (await screen.Class.Taught.Journal()).Single(e => e.Cell == new JournalCell(0, 1, "answer.better", 3));
        await screen.Class.Answer(3, "better", "Take more magnesium.", replaces: first.Id);
        IDocument page = await screen.Send(form, ("marks", "0"), ("reason", "Say why."));
        Assert.Contains("has changed since this page was opened", TeachersScreen.Faults(page), StringComparison.Ordinal);
        Assert.Contains("Take more magnesium.", page.QuerySelector(".prose")!.TextContent, StringComparison.Ordinal);
        Assert.Equal("Say why.", page.QuerySelector("textarea")!.TextContent);
        Assert.Empty(await screen.Marks());
        await screen.Send(Giving(page), ("marks", "1"));
        Assert.Single(await screen.Marks());
    }

    [Fact]
    public async Task A_form_that_is_sent_twice_marks_one_answer_once()
    {
        await using MarkingScreen screen = await MarkingScreen.Answered();
        IElement form = Giving(await screen.Page("/words"));
        await Task.WhenAll(screen.Post(form, ("marks", "1")), screen.Post(form, ("marks", "1")));
        await screen.Post(form, ("marks", "1"));
        Assert.Single(await screen.Marks());
        IDocument other = await screen.Send(form, ("marks", "0"));
        Assert.Contains("sent before with other marks", TeachersScreen.Faults(other), StringComparison.Ordinal);
        Assert.Single(await screen.Marks());
    }

    [Fact]
    public async Task The_schools_own_comments_are_put_in_by_a_button_without_script()
    {
        await using MarkingScreen screen = await MarkingScreen.Answered();
        IDocument comments = await screen.Page("/comments");
        Assert.Equal(10, comments.QuerySelectorAll("input[name^='text.']").Length);
        HttpResponseMessage kept = await screen.Class.Teacher.PostAsync(
            $"{screen.Address}/comments", new FormUrlEncodedContent([new("text.a", "Name the reading."), new("text.c", " Say by   how much. ")]), TestContext.Current.CancellationToken);
        Assert.Equal(HttpStatusCode.Redirect, kept.StatusCode);

        IDocument page = await screen.Page("/words?at=conserved:3");
        Assert.Equal(["a", "c"], page.QuerySelectorAll("[data-comment]").Select(b => b.GetAttribute("data-key-press")));
        page = await screen.Send(Giving(page), ("insert", "2"), ("reason", "Not so."));
        Assert.Equal("Not so. Say by how much.", page.QuerySelector("textarea")!.TextContent);
        Assert.Empty(await screen.Marks());
        page = await screen.Send(Giving(page), ("marks", "0"));
        Assert.Equal("Not so. Say by how much.", ((EntryContent.Mark)Assert.Single(await screen.Marks()).Content).Comment);
    }

    [Fact]
    public async Task A_comment_that_is_too_long_is_not_lost_and_nothing_of_it_is_kept_as_markup()
    {
        await using MarkingScreen screen = await MarkingScreen.Answered();
        string longText = new('x', 1001);
        IDocument page = await screen.Send(Giving(await screen.Page("/words?at=conserved:3")), ("marks", "0"), ("reason", longText));
        Assert.Contains("at most 1000 are kept", TeachersScreen.Faults(page), StringComparison.Ordinal);
        Assert.Equal(longText, page.QuerySelector("textarea")!.TextContent);
        await screen.Send(Giving(page), ("marks", "0"), ("reason", "</textarea><script>alert(1)</script>"));
        Assert.Empty((await screen.Page("/words?at=conserved:3")).QuerySelectorAll("main script"));
        Assert.Empty((await screen.Page("/students/3")).QuerySelectorAll("main script"));
    }

    [Theory]
    [InlineData("at", "conserved:2")]
    [InlineData("at", "")]
    [InlineData("at", "nothing:1")]
    [InlineData("at", "conserved:999999999999999999999")]
    public async Task A_form_for_an_answer_that_is_not_there_leads_to_the_next_with_a_sentence(string field, string value)
    {
        await using MarkingScreen screen = await MarkingScreen.Answered();
        IDocument page = await screen.Send(Giving(await screen.Page("/words")), (field, value), ("marks", "1"));
        Assert.Contains("not among those to be marked", TeachersScreen.Faults(page), StringComparison.Ordinal);
        Assert.NotNull(page.QuerySelector(".prose"));
        Assert.Empty(await screen.Marks());
    }

    [Fact]
    public async Task Own_comments_that_are_too_long_are_shown_again_and_not_kept()
    {
        await using MarkingScreen screen = await MarkingScreen.Answered();
        HttpResponseMessage answer = await screen.Class.Teacher.PostAsync(
            $"{screen.Address}/comments", new FormUrlEncodedContent([new("text.b", new string('y', 201)), new("text.z", "no such key")]), TestContext.Current.CancellationToken);
        IDocument page = await TeachersScreen.Parsed(answer);
        Assert.Contains("The text of b has 201 characters: at most 200 are kept.", TeachersScreen.Faults(page), StringComparison.Ordinal);
        Assert.Equal(new string('y', 201), page.QuerySelector("input[name='text.b']")!.GetAttribute("value"));
        Assert.Empty((await screen.Page("/words")).QuerySelectorAll("[data-comment]"));
    }

    private static IElement Giving(IDocument page) => page.QuerySelector("form.giving")!;
}
