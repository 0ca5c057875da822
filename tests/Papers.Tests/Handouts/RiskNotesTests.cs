using Calx.Chemistry.Elements;
using Calx.Measurement.Weighing;
using Calx.Papers.Documents;
using Calx.Papers.Handouts;
using Calx.Papers.Tests.Reports;
using Calx.Papers.Texts;
using Calx.Practicals.Clock;
using Calx.Practicals.Definition;
using Calx.Practicals.Planning;

namespace Calx.Papers.Tests.Handouts;

/// <summary>Notes for the teacher's own risk assessment.</summary>
public sealed class RiskNotesTests
{
    [Fact]
    public void They_say_first_who_decides_and_approve_nothing()
    {
        foreach (string id in BuiltInPracticals.Ids)
        {
            IReadOnlyList<string> lines = Written.LinesOf(RiskNotes.Of(StudentSheetTests.Setting(StudentSheetTests.Plans[id])));
            Assert.Equal(new RiskNotesTexts(PaperLanguage.BritishEnglish).Before, lines[2]);
            Assert.DoesNotContain(lines, l => l.Contains("approved", StringComparison.OrdinalIgnoreCase) || l.Contains("is safe", StringComparison.OrdinalIgnoreCase));
        }
    }

    [Fact]
    public void Every_hazard_emergency_and_stop_of_the_practical_is_in_them()
    {
        foreach (string id in BuiltInPracticals.Ids)
        {
            Practical practical = BuiltInPracticals.Find(id)!;
            string text = Written.Of(RiskNotes.Of(StudentSheetTests.Setting(StudentSheetTests.Plans[id])));
            Assert.All(practical.Hazards, h => Assert.Contains(h.Control[1..], text, StringComparison.Ordinal));
            Assert.All(practical.Emergencies, e => Assert.Contains(e.Act[1..], text, StringComparison.Ordinal));
            Assert.All(practical.Observations.Where(o => o.Stop), o => Assert.Contains(o.Label[1..], text, StringComparison.Ordinal));
            Assert.All(practical.Technician.Waste, w => Assert.Contains(w[1..], text, StringComparison.Ordinal));
        }
    }

    [Fact]
    public void Where_no_hazard_is_a_thing_or_an_act_no_table_of_them_stands_empty()
    {
        Practical all = BuiltInPracticals.Find("magnesium-oxide")!;
        HashSet<int> acts = [.. all.Hazards.Where(h => h.Material is null).Select(h => h.At.Line)];
        string text = string.Join('\n', all.SourceText.Split('\n').Where((_, i) => !acts.Contains(i + 1)));
        Practical few = PracticalReader.Read(text, "few.yaml").Practical!;
        Plan plan = Plan.Of(new PlanSettings(few, 12, [new Balance(0.01)], 100), AtomicWeights.Iupac2024, new PlanOptions(lessons: 100, looksForWays: false));
        string heading = new RiskNotesTexts(PaperLanguage.BritishEnglish).ActsHeading;

        Assert.Contains(heading, Written.LinesOf(RiskNotes.Of(StudentSheetTests.Setting(Planned.Magnesium(12)))));
        Assert.DoesNotContain(heading, Written.LinesOf(RiskNotes.Of(StudentSheetTests.Setting(plan))));
        Assert.All(few.Hazards, h => Assert.NotNull(h.Material));
        Assert.NotEmpty(few.Hazards);
    }

    /// <summary>International Chemical Safety Card 1416 (2023): copper(II) sulfate pentahydrate, danger, H302, H318, H410.</summary>
    [Fact]
    public void A_classification_stands_with_what_it_rests_on()
    {
        PaperTable substances = Substances("copper-sulfate-hydrate");
        string[] hydrate = [.. substances.Rows[0].Select(c => c.Text.Text)];
        Assert.Equal("Danger", hydrate[1]);
        Assert.Equal("Acute Tox. 4; Eye Dam. 1; Aquatic Chronic 1: H302, H318, H410", hydrate[2]);
        Assert.Equal("International Chemical Safety Card 1416, 2023", hydrate[3]);
        // What was not looked up says so; nothing is called harmless for want of a word.
        Assert.Equal(["–", "–", "look it up"], substances.Rows.Single(r => r[0].Text.Text.StartsWith("Sulfur trioxide", StringComparison.Ordinal)).Skip(1).Take(3).Select(c => c.Text.Text));
        Assert.Equal(["–", "not classified", "memory: look it up"], Substances("magnesium-oxide").Rows.Single(r => r[0].Text.Text.StartsWith("Magnesium oxide", StringComparison.Ordinal)).Skip(1).Take(3).Select(c => c.Text.Text));
    }

    [Fact]
    public void The_amounts_are_those_of_the_plan()
    {
        string text = Written.Of(RiskNotes.Of(StudentSheetTests.Setting(Planned.Magnesium(12))));
        Assert.Contains("Each group uses 0.24 g, heated 2 times; no group takes more than 0.3 g (ribbon only, never powder). Together the class uses 2.88 g.", text, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("candle-open-and-closed", "Nothing is weighed out: each group takes what the steps say, and no more than 30 g (two tea lights")]
    [InlineData("copper-electrolysis", "is about 0.158 g, and no more than 0.3 g (no more than 0.5 A and 30 min)")]
    [InlineData("copper-oxide-reduction", "as a demonstration. It uses 3 g, heated once, and never more than 4 g")]
    public void Nobody_is_told_that_a_group_uses_what_is_not_weighed_out(string id, string said)
    {
        int groups = BuiltInPracticals.Find(id)!.Limits.Groups ?? 12;
        Plan plan = Plan.Of(
            new PlanSettings(BuiltInPracticals.Find(id)!, groups, [new Balance(0.01)], 100).WithHeatings(1), AtomicWeights.Iupac2024, new PlanOptions(lessons: 100, looksForWays: false));
        string text = Written.Of(RiskNotes.Of(StudentSheetTests.Setting(plan)));
        Assert.Contains(said, text, StringComparison.Ordinal);
        Assert.DoesNotContain("Together the class uses", text, StringComparison.Ordinal);
    }

    [Fact]
    public void A_source_that_the_file_gives_for_a_hazard_is_printed_with_it()
    {
        const string Source = "Supplier's data sheet 7, 2026";
        string text = BuiltInPracticals.Find("magnesium-oxide")!.SourceText;
        Practical own = BuiltInPracticals.Find("magnesium-oxide")!;
        Hazard first = own.Hazards.First(h => h.Material is not null && h.Source is null);
        string[] lines = text.Split('\n');
        string line = lines[first.At.Line - 1];
        lines[first.At.Line - 1] = $"{line[..line.LastIndexOf("standing:", StringComparison.Ordinal)]}standing: literature, source: \"{Source}\" }}";
        Practical sourced = PracticalReader.Read(string.Join('\n', lines), "sourced.yaml").Practical!;
        Plan plan = Plan.Of(new PlanSettings(sourced, 12, [new Balance(0.01)], 100), AtomicWeights.Iupac2024, new PlanOptions(lessons: 100, looksForWays: false));
        Assert.Contains(Source, Written.Of(RiskNotes.Of(StudentSheetTests.Setting(plan))), StringComparison.Ordinal);
    }

    [Fact]
    public void The_lesson_strip_has_the_last_calls_and_every_emergency()
    {
        Practical practical = BuiltInPracticals.Find("magnesium-oxide")!;
        Paper strip = LessonStrip.Of(StudentSheetTests.Setting(Planned.Easy));
        string text = Written.Of(strip);
        Assert.All(practical.Emergencies, e => Assert.Contains(e.Act, text, StringComparison.Ordinal));
        PaperTable calls = Written.Blocks(strip.Content).OfType<PaperBlock.Table>().Single().Content;
        // 120 min, gas off 15 min before the bell.
        Assert.Contains(calls.Rows, r => r[0].Text.Text == "105" && r[2].Text.Text.StartsWith("Gas off", StringComparison.Ordinal));
        Assert.Contains(calls.Rows, r => r[0].Text.Text == "120" && r[2].Text.Text == "The bell.");
        Assert.Equal(calls.Rows.Select(r => int.Parse(r[0].Text.Text, System.Globalization.CultureInfo.InvariantCulture)).Order(), calls.Rows.Select(r => int.Parse(r[0].Text.Text, System.Globalization.CultureInfo.InvariantCulture)));
        Assert.Single(Written.Blocks(strip.Content).OfType<PaperBlock.Figure>());
    }

    private static PaperTable Substances(string id) => Written.Blocks(RiskNotes.Of(StudentSheetTests.Setting(StudentSheetTests.Plans[id])).Content)
        .OfType<PaperBlock.Table>().Select(t => t.Content).Single(t => t.Columns[0].Heading.Text == "Substance and form");
}
