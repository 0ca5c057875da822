using Calx.Chemistry.Elements;
using Calx.Measurement.Weighing;
using Calx.Papers.Documents;
using Calx.Papers.Handouts;
using Calx.Papers.Tests.Reports;
using Calx.Practicals.Clock;
using Calx.Practicals.Definition;
using Calx.Practicals.Planning;

namespace Calx.Papers.Tests.Handouts;

/// <summary>The sheet that students work from.</summary>
public sealed class StudentSheetTests
{
    [Fact]
    public void Steps_have_the_amount_of_the_plan_as_the_balance_shows_it()
    {
        string text = Written.Of(StudentSheet.Of(Setting(Plan.Of(
            new PlanSettings(BuiltInPracticals.Find("magnesium-oxide")!, 2, [new Balance(0.001)], 120).WithSample(0.2),
            AtomicWeights.Iupac2024, new PlanOptions(lessons: 100, looksForWays: false))), SupportLevel.Standard));
        Assert.Contains("Put 0.200\u00a0g of magnesium", text, StringComparison.Ordinal);
        Assert.Contains("Your balance shows three decimals", text, StringComparison.Ordinal);
        Assert.DoesNotMatch(@"\{|\}", text);
    }

    [Fact]
    public void What_the_technician_prepares_is_no_step_of_the_students()
    {
        Assert.Contains("Heat the empty crucible", Written.Of(StudentSheet.Of(Setting(Planned.Magnesium(12)), SupportLevel.Open)), StringComparison.Ordinal);
        string prepared = Written.Of(StudentSheet.Of(Setting(Planned.Easy), SupportLevel.Open));
        Assert.DoesNotContain("Heat the empty crucible", prepared, StringComparison.Ordinal);
        Assert.DoesNotContain("rub it bright", prepared, StringComparison.Ordinal);
        // One heating is planned: nobody is told to heat again.
        Assert.DoesNotContain("weigh again", prepared, StringComparison.Ordinal);
    }

    [Fact]
    public void Rows_are_headed_quantity_and_unit_with_one_heating_more_than_planned()
    {
        PaperTable table = Tables(StudentSheet.Of(Setting(Planned.Magnesium(12)), SupportLevel.Standard)).Single(t => t.Columns[0].Heading.Text == "Reading");
        string[] expected =
        [
            "Mass of empty crucible and lid\u00a0/\u00a0g", "Mass of crucible, lid and magnesium\u00a0/\u00a0g", "Mass after heating\u00a0/\u00a0g",
            "Mass after reheating\u00a0/\u00a0g", "Mass after reheating 2\u00a0/\u00a0g",
        ];
        Assert.Equal(expected, table.Rows.Select(r => r[0].Text.Text));
        Assert.All(table.Rows.SelectMany(r => r.Skip(1)), cell => Assert.Equal("", cell.Text.Text));
    }

    [Fact]
    public void Every_trial_has_a_column() =>
        Assert.Equal(["Trial 1", "Trial 2"], Tables(StudentSheet.Of(Setting(Planned.Hydrate), SupportLevel.Open)).Single(t => t.Columns[0].Heading.Text == "Reading").Columns.Skip(1).Select(c => c.Heading.Text));

    [Theory]
    [MemberData(nameof(Everything))]
    public void Cautions_stand_above_the_first_step_and_none_is_left_out(string id, SupportLevel level)
    {
        Paper sheet = StudentSheet.Of(Setting(Plans[id]), level);
        List<string> lines = [.. Written.LinesOf(sheet)];
        int steps = lines.IndexOf("What you do");
        Practical practical = BuiltInPracticals.Find(id)!;
        Assert.All(practical.Hazards, hazard => Assert.InRange(lines.FindIndex(l => l.Contains(hazard.Control, StringComparison.Ordinal)), 0, steps));
        Assert.All(practical.Observations.Where(o => o.Stop && !o.TeacherOnly), stop => Assert.InRange(lines.FindIndex(l => l.Contains(stop.Label, StringComparison.Ordinal)), 0, steps));
    }

    /// <summary>Words that mislead about measurement: common practice in schools, no source.</summary>
    [Theory]
    [MemberData(nameof(Everything))]
    public void The_words_of_measurement_are_right(string id, SupportLevel level) =>
        Assert.DoesNotMatch(@"(?i)\bweights?\b|\breliab|human error|very accurate", Written.Of(StudentSheet.Of(Setting(Plans[id]), level)));

    [Fact]
    public void Only_what_helps_differs_between_the_levels()
    {
        PaperSetting setting = Setting(Planned.Magnesium(12));
        string guided = Written.Of(StudentSheet.Of(setting, SupportLevel.Guided));
        string open = Written.Of(StudentSheet.Of(setting, SupportLevel.Open));
        Assert.Contains("mass of oxygen = mass after heating − mass of crucible, lid and magnesium", guided, StringComparison.Ordinal);
        Assert.Contains("moles of oxygen atoms = (mass of oxygen)/(molar mass of O) = ([])/([]) = [] mol", guided, StringComparison.Ordinal);
        Assert.Contains("Words to use", guided, StringComparison.Ordinal);
        Assert.DoesNotContain("molar mass of O", open, StringComparison.Ordinal);
        Assert.DoesNotContain("Words to use", open, StringComparison.Ordinal);
        Assert.Contains("Work out from your readings: ratio Mg : O.", open, StringComparison.Ordinal);
        Assert.All(Planned.Magnesium(12).Settings.Practical.Sheet.Questions, q => Assert.All((string[])[guided, open], s => Assert.Contains(q.Ask, s, StringComparison.Ordinal)));
    }

    /// <summary>Standard atomic weights of IUPAC, abridged: Mg 24.305, O 15.999.</summary>
    [Fact]
    public void Molar_masses_are_given_to_one_decimal() =>
        Assert.Contains("Molar masses: Mg 24.3; O 16.0 (g/mol).", Written.Of(StudentSheet.Of(Setting(Planned.Magnesium(12)), SupportLevel.Guided)), StringComparison.Ordinal);

    [Fact]
    public void A_sheet_says_DRAFT_until_the_practical_was_signed()
    {
        Assert.StartsWith("DRAFT", StudentSheet.Of(Setting(Planned.Easy), SupportLevel.Open).Heads.Draft!, StringComparison.Ordinal);
        Assert.Null(StudentSheet.Of(new PaperSetting(Planned.Easy, PaperOccasion.Unsaid, null, isChecked: true), SupportLevel.Open).Heads.Draft);
    }

    [Fact]
    public void The_teacher_is_told_what_the_table_has_no_reading_for()
    {
        Assert.Empty(SheetWarnings.Of(Planned.Magnesium(12).Settings));
        IReadOnlyList<string> warnings = SheetWarnings.Of(Planned.WithoutEmpty.Settings);
        Assert.Contains("'Mass of magnesium' is asked for, but the table has no row for 'Mass of empty crucible and lid'.", warnings);
        // Not asked directly, but worked out from what is.
        Assert.Contains(warnings, w => w.StartsWith("'Ratio Mg : O'", StringComparison.Ordinal));
        Assert.DoesNotContain(warnings, w => w.StartsWith("'Mass of oxygen'", StringComparison.Ordinal));
        Assert.Contains(warnings, w => w.StartsWith("The question 'A group finds less oxygen", StringComparison.Ordinal));
    }

    public static TheoryData<string, SupportLevel> Everything
    {
        get
        {
            var data = new TheoryData<string, SupportLevel>();
            foreach (string id in BuiltInPracticals.Ids)
            {
                foreach (SupportLevel level in Enum.GetValues<SupportLevel>())
                {
                    data.Add(id, level);
                }
            }

            return data;
        }
    }

    internal static IReadOnlyDictionary<string, Plan> Plans { get; } = BuiltInPracticals.Ids.ToDictionary(id => id, id => Plan.Of(
        new PlanSettings(BuiltInPracticals.Find(id)!, 12, [new Balance(0.01), new Balance(0.01)], 100), AtomicWeights.Iupac2024, new PlanOptions(lessons: 100, looksForWays: false)));

    internal static PaperSetting Setting(Plan plan) => new(plan, PaperOccasion.Unsaid, null, isChecked: false);

    private static IEnumerable<PaperTable> Tables(Paper paper) => Written.Blocks(paper.Content).OfType<PaperBlock.Table>().Select(t => t.Content);
}
