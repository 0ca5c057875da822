using System.Net;
using AngleSharp.Dom;
using Calx.Practicals.Drafting;

namespace Calx.App.Tests.Pages.Teachers;

/// <summary>A practical of one's own on the pages: written, checked, saved, versioned, and used in lessons.</summary>
public sealed class WritingTests
{
    private static readonly string First = Drafted("Mass of a cold dish");

    private static readonly string Second = Drafted("Mass of a dry dish").Replace("title: 'Mine'", "title: 'Mine, better'", StringComparison.Ordinal);

    [Fact]
    public async Task The_example_stands_there_with_its_table_its_theory_and_what_is_to_be_looked_up()
    {
        await using TeachersScreen screen = await TeachersScreen.Start();
        IDocument page = await screen.Page("/practicals/new");

        Assert.Contains("practical: heating-zinc-carbonate", page.QuerySelector("#text")!.TextContent, StringComparison.Ordinal);
        Assert.Contains("hazard of zinc carbonate not known", page.QuerySelector(".findings")!.TextContent, StringComparison.Ordinal);
        Assert.Contains("Mass of empty crucible / g", page.QuerySelector("#seen table")!.TextContent, StringComparison.Ordinal);
        Assert.All(page.QuerySelectorAll(".questions input:not([type=radio]), .questions select, textarea"), i => Assert.NotNull(page.QuerySelector($"label[for='{i.Id}']")));
    }

    [Fact]
    public async Task Answers_write_the_file_and_a_wrong_one_leaves_it_as_it_was()
    {
        await using TeachersScreen screen = await TeachersScreen.Start();
        IDocument right = await TeachersScreen.Parsed(await screen.Post("/practicals/new", ("answer.happens", "heated"), ("answer.equation", "Mg + O2 -> MgO"), ("text", "old")));
        IDocument wrong = await TeachersScreen.Parsed(await screen.Post("/practicals/new", ("answer.equation", "Mg -> CaO"), ("text", "practical: mine")));

        Assert.Contains("2Mg + O2 -> 2MgO", right.QuerySelector("#text")!.TextContent, StringComparison.Ordinal);
        Assert.Contains("cannot be balanced", TeachersScreen.Faults(wrong), StringComparison.Ordinal);
        Assert.Equal("practical: mine", wrong.QuerySelector("#text")!.TextContent.Trim());
    }

    [Fact]
    public async Task What_the_script_fetches_names_every_fault_with_its_line()
    {
        await using TeachersScreen screen = await TeachersScreen.Start();
        string wrong = First.Replace("ZnCO3 -> ZnO + CO2'", "ZnCO3 -> ZnO + 2CO2'", StringComparison.Ordinal);
        IDocument part = await TeachersScreen.Parsed(await screen.Post("/practicals/new/look", ("text", wrong)));

        int line = wrong[..wrong.IndexOf("2CO2'", StringComparison.Ordinal)].Count(c => c == '\n') + 1;
        Assert.Contains(part.QuerySelectorAll("li.wrong"), l => l.TextContent.Contains("not balanced", StringComparison.Ordinal) && l.GetAttribute("data-line") == $"{line}");
    }

    [Fact]
    public async Task A_lesson_keeps_the_version_with_which_it_was_made()
    {
        await using TeachersScreen screen = await TeachersScreen.Start();
        Assert.Equal("/practicals/mine/edit?saved=1", await screen.Send("/practicals/new/save", ("text", First)));
        string lesson = await screen.Send(
            "/lessons", ("practical", "mine"), ("plan", "?groups=4"), ("name", "9F"), ("year", "2026/27"), ("date", "2026-11-26"), ("room", "Lab 2"), ("decide", "yes"));
        await screen.Send($"/practicals/mine/sign", ("plan", "?groups=4"), ("checked", "yes"), ("initials", "LM"));

        Assert.Equal("/practicals/mine/edit?saved=2", await screen.Send("/practicals/new/save", ("id", "mine"), ("text", Second)));

        // The lesson opens and prints as it was; the plan, the list and the signature are those of the new version.
        Assert.Contains("Mine", (await screen.Page(lesson)).Body!.TextContent, StringComparison.Ordinal);
        string sheet = await screen.Browser.GetStringAsync($"{lesson}/papers/student-sheet-standard.html", TestContext.Current.CancellationToken);
        Assert.Contains("Mass of a cold dish", sheet, StringComparison.Ordinal);
        Assert.DoesNotContain("Mass of a dry dish", sheet, StringComparison.Ordinal);
        IDocument plan = await screen.Page("/practicals/mine?groups=4");
        Assert.Contains("version 2", plan.Body!.TextContent, StringComparison.Ordinal);
        Assert.NotNull(plan.QuerySelector(".way a[href='/practicals/mine/edit']"));
        Assert.Null((await screen.Page("/practicals/magnesium-oxide")).QuerySelector(".way a[href$='/edit']"));
        Assert.Contains("Not yet checked", plan.QuerySelector("#safety")!.TextContent, StringComparison.Ordinal);
        Assert.Contains("Mine, better", (await screen.Page("/practicals")).Body!.TextContent, StringComparison.Ordinal);
    }

    [Fact]
    public async Task Earlier_versions_stay_and_one_that_is_saved_again_becomes_the_newest()
    {
        await using TeachersScreen screen = await TeachersScreen.Start();
        await screen.Send("/practicals/new/save", ("text", First));
        await screen.Send("/practicals/new/save", ("id", "mine"), ("text", Second));
        IDocument first = await screen.Page("/practicals/mine/edit?version=1");
        string saved = await screen.Send("/practicals/new/save", ("id", "mine"), ("text", first.QuerySelector("#text")!.TextContent));

        Assert.Contains("Mass of a cold dish", first.QuerySelector("#text")!.TextContent, StringComparison.Ordinal);
        Assert.Equal("/practicals/mine/edit?saved=3", saved);
        Assert.Equal(["version 2", "version 1"], (await screen.Page("/practicals/mine/edit")).QuerySelectorAll(".versions a").Select(a => a.TextContent));
    }

    [Fact]
    public async Task What_is_no_practical_or_takes_the_program_s_id_is_not_saved_and_nothing_typed_is_lost()
    {
        await using TeachersScreen screen = await TeachersScreen.Start();
        (string, string)[] bad =
        [
            ("practical: mine\ntitle: half", "put them right first"),
            (First.Replace("practical: mine", "practical: magnesium-oxide", StringComparison.Ordinal), "The program brings along"),
        ];
        foreach ((string text, string reason) in bad)
        {
            HttpResponseMessage answer = await screen.Post("/practicals/new/save", ("text", text));
            IDocument page = await TeachersScreen.Parsed(answer);
            Assert.Equal(HttpStatusCode.BadRequest, answer.StatusCode);
            Assert.Contains(reason, page.QuerySelector("[role=alert]")!.TextContent, StringComparison.Ordinal);
            Assert.Equal(text.Trim(), page.QuerySelector("#text")!.TextContent.Trim());
        }

        Assert.False(Directory.Exists(Path.Combine(screen.Host.DataFolder, "practicals")));
    }

    [Fact]
    public async Task With_a_wrong_answer_nothing_is_saved_until_it_is_put_right_or_the_file_is_written_by_hand()
    {
        await using TeachersScreen screen = await TeachersScreen.Start();
        IDocument fresh = await screen.Page("/practicals/new");
        (string, string)[] sent = [("answer.title", "Mine"), ("text", Value(fresh, "#text")), ("written", Value(fresh, "[name=written]"))];
        HttpResponseMessage wrong = await screen.Post("/practicals/new/save", [.. sent, ("answer.equation", "MgCO3 = > MgO + CO2")]);
        IDocument page = await TeachersScreen.Parsed(wrong);

        Assert.Equal(HttpStatusCode.BadRequest, wrong.StatusCode);
        Assert.Contains("Not saved: an answer is to be put right. The equation: ", page.QuerySelector("[role=alert]")!.TextContent, StringComparison.Ordinal);
        Assert.False(Directory.Exists(Path.Combine(screen.Host.DataFolder, "practicals")));

        // Put right, it is saved as answered, though no button wrote the file anew.
        sent[1] = ("text", Value(page, "#text"));
        sent[2] = ("written", Value(page, "[name=written]"));
        Assert.Equal("/practicals/mine/edit?saved=1", await screen.Send("/practicals/new/save", [.. sent, ("answer.equation", "MgCO3 -> MgO + CO2")]));
        Assert.Contains("MgCO3 -> MgO + CO2", Value(await screen.Page("/practicals/mine/edit"), "#text"), StringComparison.Ordinal);

        sent[1] = ("text", Value(page, "#text").Replace("practical: heating-zinc-carbonate", "practical: by-hand", StringComparison.Ordinal));
        Assert.Equal("/practicals/by-hand/edit?saved=1", await screen.Send("/practicals/new/save", [.. sent, ("answer.equation", "MgCO3 = > MgO + CO2")]));
    }

    [Fact]
    public async Task A_new_practical_with_the_id_of_one_of_ones_own_is_refused_and_that_one_stays_as_it_was()
    {
        await using TeachersScreen screen = await TeachersScreen.Start();
        await screen.Send("/practicals/new/save", ("text", First));
        await screen.Send("/practicals/new/save", ("text", First.Replace("practical: mine", "practical: other", StringComparison.Ordinal)));
        IDocument first = await screen.Page("/practicals/mine/edit");

        // As a new one, and from the page on which another is edited.
        foreach (string edited in (string[])["", "other"])
        {
            HttpResponseMessage answer = await screen.Post("/practicals/new/save", ("id", edited), ("text", Second));
            Assert.Equal(HttpStatusCode.BadRequest, answer.StatusCode);
            Assert.Contains("You have a practical 'mine' already: edit it, or give another short name", (await TeachersScreen.Parsed(answer)).QuerySelector("[role=alert]")!.TextContent, StringComparison.Ordinal);
        }

        IDocument after = await screen.Page("/practicals/mine/edit");
        Assert.Equal(Value(first, "#text"), Value(after, "#text"));
        Assert.Empty(after.QuerySelectorAll(".versions a"));
    }

    private static string Value(IDocument page, string field) => page.QuerySelector(field) is { LocalName: "input" } input ? input.GetAttribute("value")! : page.QuerySelector(field)!.TextContent;

    private static string Drafted(string label) => Draft.Of(new Dictionary<string, string>
    {
        ["title"] = "Mine", ["id"] = "mine",
    }).Text!.Replace("Mass of empty crucible", label, StringComparison.Ordinal);
}
