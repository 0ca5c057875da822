using Calx.Chemistry.Elements;
using Calx.Measurement.Weighing;
using Calx.Papers.Documents;
using Calx.Papers.Documents.Html;
using Calx.Papers.Documents.Word;
using Calx.Papers.Handouts;
using Calx.Papers.Handouts.CatchUp;
using Calx.Practicals.CatchUp;
using Calx.Practicals.Clock;
using Calx.Practicals.Definition;
using DocumentFormat.OpenXml.Packaging;
using DocumentFormat.OpenXml.Validation;
using DocumentFormat.OpenXml.Wordprocessing;
using Paper = Calx.Papers.Documents.Paper;

namespace Calx.Papers.Tests.Handouts;

/// <summary>The papers of those who were away.</summary>
public sealed class CatchUpPaperTests
{
    internal static readonly Dictionary<string, IReadOnlyList<CatchUpPack>> Drawn = Shelf.Three.Append("iron-wool-in-air").ToDictionary(id => id, id => CatchUpPacks.Of(
        Plan(id), AtomicWeights.Iupac2024, [CatchUpStudent.Named("Amir K"), CatchUpStudent.Named("<b>&Beth")], new CatchUpOptions(2026)));

    public static MatrixTheoryData<string, SupportLevel> Everything => new(Shelf.Three, Enum.GetValues<SupportLevel>());

    [Theory]
    [MemberData(nameof(Everything))]
    public void Every_paper_is_valid_and_says_on_every_page_that_its_data_are_simulated(string id, SupportLevel level)
    {
        foreach (Paper paper in Papers(id, level))
        {
            using WordprocessingDocument file = WordprocessingDocument.Open(new MemoryStream(PaperWord.Of(paper)), isEditable: false);
            Assert.Empty(new OpenXmlValidator(DocumentFormat.OpenXml.FileFormatVersions.Office2019).Validate(file, TestContext.Current.CancellationToken).Select(e => $"{e.Path?.XPath}: {e.Description}"));
            Assert.Contains("SIMULATED DATA", file.MainDocumentPart!.HeaderParts.Single().Header!.InnerText, StringComparison.Ordinal);
            Assert.Contains("@top-left { content: \"SIMULATED DATA", PaperHtml.Of(paper), StringComparison.Ordinal);
        }
    }

    [Theory]
    [MemberData(nameof(Everything))]
    public void A_sheet_has_the_readings_and_asks_what_the_student_sheet_asks_and_nothing_is_done_with_ones_hands(string id, SupportLevel level)
    {
        Practical practical = BuiltInPracticals.Find(id)!;
        CatchUpPack pack = Drawn[id][0];
        string text = Written.Of(Papers(id, level)[0]);

        Assert.Contains(practical.Question, text, StringComparison.Ordinal);
        Assert.All(pack.Readings, r => Assert.Contains(r.Displayed.ToString(), text, StringComparison.Ordinal));
        Assert.All(practical.Sheet.Questions, q => Assert.Contains(q.Ask, text, StringComparison.Ordinal));
        Assert.Contains("Nothing is heated, mixed or weighed for it", text, StringComparison.Ordinal);
        // No sentence of the student sheet that tells how to heat.
        Assert.All(practical.Sheet.Steps, s => Assert.DoesNotContain(s.Say, text, StringComparison.Ordinal));
        Assert.DoesNotMatch(@"(?i)\bweights?\b|\breliab|human error|very accurate", text);
    }

    // Two oxides form at one time: nobody is told twice, and what is not repeated is told all the same.
    [Fact]
    public void What_was_done_without_repeats_is_told_once_and_ends_with_a_full_stop()
    {
        Practical own = BuiltInPracticals.Find("iron-wool-in-air")!;
        Practical silent = PracticalReader.Read(
            string.Join('\n', own.SourceText.Split('\n').Where((_, i) => i + 1 < own.Sheet.Account[0].At.Line - 1 || i + 1 > own.Sheet.Account[^1].At.Line)), "silent.yaml").Practical!;
        var plan = new PlanSettings(silent, 12, [new Balance(0.01)], 100);
        string text = Written.Of(CatchUpPapers.Of(new CatchUpSetting(plan, PaperOccasion.Unsaid, SupportLevel.Standard, PaperLook.Usual, isChecked: false), Drawn["iron-wool-in-air"])[0]);

        Assert.Equal(2, text.Split("let it react;").Length);
        Assert.Contains("read the balance: mass after burning.", text, StringComparison.Ordinal);
    }

    /// <summary>What is put in by the model and by nobody in the class: common practice of the bench, no source.</summary>
    [Theory]
    [InlineData("candle-open-and-closed", "put in oxygen", "let the open tea light burn for ten minutes;")]
    [InlineData("moisture-and-ash", "mineral matter", "put in about 5.00\u00a0g of fresh soil and weighed it;")]
    [InlineData("marble-and-acid", "water of the acid", "tipped the chips in, and read the mass every half minute;")]
    [InlineData("copper-electrolysis", "read the balance: current", "read the current;")]
    public void A_practical_tells_in_its_own_words_what_was_done(string id, string never, string told)
    {
        var plan = new PlanSettings(BuiltInPracticals.Find(id)!, 12, [new Balance(0.01)], 100);
        IReadOnlyList<CatchUpPack> packs = CatchUpPacks.Of(plan, AtomicWeights.Iupac2024, [CatchUpStudent.Named("Amir K")], new CatchUpOptions(2026));
        string text = Written.Of(CatchUpPapers.Of(new CatchUpSetting(plan, PaperOccasion.Unsaid, SupportLevel.Standard, PaperLook.Usual, isChecked: false), packs)[0]);

        Assert.DoesNotContain(never, text, StringComparison.OrdinalIgnoreCase);
        Assert.Contains(told, text, StringComparison.Ordinal);
    }

    // A demonstration is the teacher's: nobody is told that groups did it, and nobody is 'the group'.
    [Theory]
    [InlineData("copper-oxide-reduction")]
    [InlineData("zinc-chloride")]
    public void In_a_demonstration_the_teacher_did_it(string id)
    {
        var plan = new PlanSettings(BuiltInPracticals.Find(id)!, 1, [new Balance(0.01)], 100);
        IReadOnlyList<CatchUpPack> packs = CatchUpPacks.Of(plan, AtomicWeights.Iupac2024, [CatchUpStudent.Named("Amir K")], new CatchUpOptions(2026));
        string text = Written.Of(CatchUpPapers.Of(new CatchUpSetting(plan, PaperOccasion.Unsaid, SupportLevel.Standard, PaperLook.Usual, isChecked: false), packs)[0]);

        Assert.Contains("In the lesson the teacher, in this order,", text, StringComparison.Ordinal);
        Assert.Contains("You advise the teacher", text, StringComparison.Ordinal);
        Assert.DoesNotContain("each group", text, StringComparison.Ordinal);
        Assert.DoesNotContain("your group", text, StringComparison.Ordinal);
        Assert.DoesNotContain("You are the group", text, StringComparison.Ordinal);
        Assert.Contains("In the lesson each group, in this order,", Written.Of(Papers("magnesium-oxide", SupportLevel.Standard)[0]), StringComparison.Ordinal);
    }

    [Fact]
    public void What_is_true_stands_on_the_key_alone()
    {
        IReadOnlyList<Paper> papers = Papers("magnesium-oxide", SupportLevel.Standard);
        string key = Written.Of(papers[^1]);
        foreach ((CatchUpPack pack, Paper sheet) in Drawn["magnesium-oxide"].Zip(papers))
        {
            Assert.All(pack.Truth.Planted, c => Assert.Contains(c.Label, key, StringComparison.Ordinal));
            Assert.All(pack.Truth.Planted, c => Assert.DoesNotContain(c.Label, Written.Of(sheet), StringComparison.Ordinal));
            Assert.All(pack.Decisions, d => Assert.Contains(d.Why, key, StringComparison.Ordinal));
            Assert.Contains(string.Join("; ", pack.Readings.Select(r => r.Displayed.ToString())), key, StringComparison.Ordinal);
        }

        // One row a student in the first table.
        Assert.Equal(2, Written.Blocks(papers[^1].Content).OfType<PaperBlock.Table>().First().Content.Rows.Count);
    }

    [Fact]
    public void What_comes_next_is_folded_away_on_paper_and_closed_on_a_screen()
    {
        Paper sheet = Papers("magnesium-oxide", SupportLevel.Standard)[0];
        string html = PaperHtml.Of(sheet);
        Assert.Equal(2, Count(html, "<details>"));
        Assert.Equal(2, Count(html, "class=\"fold\""));
        Assert.Equal(3, Count(html, "class=\"strip\""));
        using WordprocessingDocument file = WordprocessingDocument.Open(new MemoryStream(PaperWord.Of(sheet)), isEditable: false);
        Table strips = file.MainDocumentPart!.Document!.Descendants<Table>().Single(t => t.GetFirstChild<TableProperties>()?.TableBorders?.InsideHorizontalBorder?.Val?.Value == BorderValues.Dashed);
        Assert.Equal(3, strips.Elements<TableRow>().Count());
        Assert.All(strips.Elements<TableRow>(), row => Assert.NotNull(row.TableRowProperties!.GetFirstChild<CantSplit>()));
    }

    [Fact]
    public void Where_nothing_is_to_be_decided_all_readings_stand_there_at_once()
    {
        CatchUpPack drawn = Drawn["magnesium-oxide"][0];
        CatchUpPack pack = new PackWorking(Plan("magnesium-oxide"), AtomicWeights.Iupac2024).Of(
            drawn.Student, [.. drawn.Readings.Where(r => r.Weighing.Occurrence == 1)], drawn.Truth, []);
        var setting = new CatchUpSetting(Plan("magnesium-oxide"), PaperOccasion.Unsaid, SupportLevel.Standard, PaperLook.Usual, isChecked: true);
        string html = PaperHtml.Of(CatchUpPapers.Of(setting, [pack])[0]);

        Assert.Equal(0, Count(html, "<details>") + Count(html, "class=\"fold\""));
        Assert.All(pack.Readings, r => Assert.Contains($"<strong>{r.Displayed}</strong>", html, StringComparison.Ordinal));
        Assert.DoesNotContain("Decide now", html, StringComparison.Ordinal);
    }

    [Fact]
    public void A_name_that_looks_like_markup_stays_text() =>
        Assert.Contains("&lt;b&gt;&amp;Beth", PaperHtml.Of(Papers("magnesium-oxide", SupportLevel.Open)[1]), StringComparison.Ordinal);

    /// <summary>Names of devices of an old system, and signs that a path or a shell takes otherwise.</summary>
    [Fact]
    public void Files_have_names_that_every_system_takes_and_no_two_the_same()
    {
        string[] names = ["Amir K", "amir-k", "Amir K.", "CON", "../etc", "a:b", "", "名前", "Ünal", new('x', 200), new('x', 201), "=1+1", "*"];
        CatchUpStudent[] students = [.. names.Where(n => n.Length > 0).Select(CatchUpStudent.Named)];
        IReadOnlyList<string> files = CatchUpNames.Of(students);
        Assert.Equal(students.Length, files.Distinct(StringComparer.OrdinalIgnoreCase).Count());
        Assert.All(files, f => Assert.Matches("^catch-up-[a-z0-9-]{1,50}$", f));
        Assert.Equal("catch-up-amir-k", files[0]);
        // Each follows from the student alone.
        Assert.Equal(files[2], CatchUpNames.Of([students[2]])[0]);
    }

    internal static IReadOnlyList<Paper> Papers(string id, SupportLevel level, PaperLook? look = null) => CatchUpPapers.Of(
        new CatchUpSetting(Plan(id), PaperOccasion.Unsaid with { ClassName = "9F" }, level, look ?? PaperLook.Usual, isChecked: false), Drawn[id]);

    private static PlanSettings Plan(string id) => new(BuiltInPracticals.Find(id)!, 12, [new Balance(0.01)], 100);

    private static int Count(string text, string part) => text.Split(part).Length - 1;
}
