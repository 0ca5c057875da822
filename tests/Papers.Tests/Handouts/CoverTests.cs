using System.Globalization;
using Calx.Papers.Documents;
using Calx.Papers.Documents.Word;
using Calx.Papers.Handouts;
using Calx.Papers.Handouts.Cover;
using Calx.Papers.Tests.Reports;
using Calx.Practicals.Definition;

namespace Calx.Papers.Tests.Handouts;

/// <summary>The papers of a lesson without practical work.</summary>
public sealed class CoverTests
{
    public static TheoryData<string> Ids => [.. Shelf.Three];

    [Theory]
    [MemberData(nameof(Ids))]
    public void That_nothing_is_done_is_said_first_and_no_paper_waits_for_a_check(string id)
    {
        PaperSetting setting = StudentSheetTests.Setting(StudentSheetTests.Plans[id]);
        PaperBlock.Panel first = Assert.IsType<PaperBlock.Panel>(CoverSheet.Of(setting).Content[0]);
        Assert.Equal("No practical work in this lesson", first.Title.Text);
        foreach (Paper paper in Papers(setting))
        {
            string text = Written.Of(paper);
            Assert.Contains("Simulated data", text, StringComparison.Ordinal);
            Assert.Contains("simulated data", paper.Heads.Left, StringComparison.Ordinal);
            Assert.Null(paper.Heads.Draft);
            // Nobody is told to do what is not done today: no step of the practical, no kit, no caution for a hazard.
            Assert.DoesNotContain("Eye protection", text, StringComparison.Ordinal);
            Assert.All(BuiltInPracticals.Find(id)!.Sheet.Steps, s => Assert.DoesNotContain(s.Say, text, StringComparison.Ordinal));
            Assert.DoesNotMatch(@"(?i)\bweights?\b|\breliab|human error|very accurate", text);
        }
    }

    [Theory]
    [InlineData(4, 8)]
    [InlineData(10, 10)]
    [InlineData(18, 12)]
    public void The_class_has_from_eight_to_twelve_groups_and_two_decimals_everywhere(int groups, int rows)
    {
        PaperTable table = Data(CoverSheet.Of(StudentSheetTests.Setting(Planned.Magnesium(groups))));
        Assert.Equal(rows, table.Rows.Count);
        Assert.Equal(
            ["Group", "Mass of empty crucible and lid\u00a0/\u00a0g", "Mass of crucible, lid and magnesium\u00a0/\u00a0g", "Mass after heating\u00a0/\u00a0g"],
            table.Columns.Select(c => c.Heading.Text).Take(4));
        Assert.All(table.Rows.SelectMany(r => r.Skip(1)), c => Assert.Matches(@"^(\d+\.\d\d|–)$", c.Text.Text));
        Assert.All(table.Rows, r => Assert.All(r.Skip(1).Take(3), c => Assert.NotEqual("–", c.Text.Text)));
    }

    [Fact]
    public void The_same_seed_gives_the_same_class_on_all_three_papers_and_another_seed_another()
    {
        string[] drawn = [.. ((ulong[])[1, 1, 2]).Select(seed => Cells(Data(CoverSheet.Of(Seeded(seed)))))];
        Assert.Equal(drawn[0], drawn[1]);
        Assert.NotEqual(drawn[0], drawn[2]);
        Assert.Equal(drawn[2], Cells(Data(CoverQuestions.Of(Seeded(2)))));
        Assert.Equal(PaperWord.Of(CoverKey.Of(Seeded(2))), PaperWord.Of(CoverKey.Of(Seeded(2))));
        Assert.Contains("(set 2)", Written.Of(CoverKey.Of(Seeded(2))), StringComparison.Ordinal);
    }

    [Theory]
    [InlineData(45)]
    [InlineData(60)]
    [InlineData(101.5)]
    public void The_minutes_of_the_steps_are_those_of_the_lesson(double minutes)
    {
        PaperSetting setting = StudentSheetTests.Setting(Practicals.Planning.Plan.Of(
            Planned.Magnesium(12).Settings.WithMinutes(minutes), Chemistry.Elements.AtomicWeights.Iupac2024, new Practicals.Planning.PlanOptions(lessons: 100, looksForWays: false)));
        PaperTable steps = Table(CoverSheet.Of(setting), "Minute");
        Assert.Equal((int)minutes, steps.Rows.Sum(r => int.Parse(r[1].Text.Text, CultureInfo.InvariantCulture)));
        Assert.EndsWith($"to {(int)minutes}", steps.Rows[^1][0].Text.Text, StringComparison.Ordinal);
    }

    /// <summary>Worked by hand from the rows of the sheet: molar masses Mg 24.305, O 15.999 (IUPAC, abridged).</summary>
    [Fact]
    public void The_key_works_every_group_from_its_row()
    {
        PaperTable data = Data(CoverSheet.Of(Seeded(4))), key = Table(CoverKey.Of(Seeded(4)), "Group");
        for (int i = 0; i < data.Rows.Count; i++)
        {
            double[] read = [.. data.Rows[i].Skip(1).Select(c => c.Text.Text).Where(t => t != "–").Select(Number)];
            double magnesium = Math.Round(read[1] - read[0], 2), oxygen = Math.Round(read[^1] - read[1], 2);
            Assert.Equal(magnesium, Number(key.Rows[i][1].Text.Text));
            Assert.Equal(oxygen, Number(key.Rows[i][2].Text.Text));
            double[] ratio = [.. key.Rows[i][5].Text.Text.Split("–").SelectMany(t => t.Split(" to ")).Select(Number)];
            Assert.InRange(magnesium / 24.305 / (oxygen / 15.999), ratio[0], ratio[1]);
            // As a class does it: molar masses to one decimal, moles to three figures. Neither way may be marked wrong.
            Assert.InRange(Figures(magnesium / 24.3) / Figures(oxygen / 16.0), ratio[0], ratio[1]);
        }
    }

    [Fact]
    public void A_group_is_called_odd_where_something_counts_in_it_and_only_there()
    {
        Paper key = CoverKey.Of(Seeded(4));
        string[] marked = [.. Table(key, "Group").Rows.Select(r => r[0].Text.Text).Where(t => t.EndsWith(" (odd)", StringComparison.Ordinal)).Select(t => t.Split(' ')[0])];
        string[] told = [.. Written.LinesOf(key).Where(l => l.StartsWith("Group ", StringComparison.Ordinal) && l.Contains(':', StringComparison.Ordinal)).Select(l => l[6..l.IndexOf(':', StringComparison.Ordinal)])];
        Assert.NotEmpty(marked);
        Assert.True(marked.Length < 12);
        Assert.Equal(marked, told);
    }

    [Fact]
    public void Every_question_with_its_points_is_in_the_key_and_the_students_paper_has_no_answers()
    {
        PaperSetting setting = Seeded(1);
        string key = Written.Of(CoverKey.Of(setting)), students = Written.Of(CoverQuestions.Of(setting)), teacher = Written.Of(CoverSheet.Of(setting));
        Assert.All(setting.Practical.Sheet.Questions, q =>
        {
            Assert.All((string[])[key, students, teacher], text => Assert.Contains(q.Ask, text, StringComparison.Ordinal));
            Assert.All(q.Expected, e => Assert.Contains(e[1..], key, StringComparison.Ordinal));
            Assert.All(q.Expected, e => Assert.DoesNotContain(e[1..], students, StringComparison.Ordinal));
        });
        Assert.Contains("Mass of oxygen\u00a0/\u00a0g = mass after heating − mass of crucible, lid and magnesium", students, StringComparison.Ordinal);
        Assert.DoesNotContain("odd)", students, StringComparison.Ordinal);
    }

    [Fact]
    public void What_the_plan_does_not_weigh_is_neither_in_the_table_nor_asked_for()
    {
        PaperSetting setting = StudentSheetTests.Setting(Planned.WithoutEmpty);
        Assert.DoesNotContain(Data(CoverSheet.Of(setting)).Columns, c => c.Heading.Text.Contains("empty", StringComparison.Ordinal));
        string students = Written.Of(CoverQuestions.Of(setting));
        Assert.DoesNotContain("Mass of magnesium\u00a0/", students, StringComparison.Ordinal);
        Assert.DoesNotContain("make the ratio less uncertain", students, StringComparison.Ordinal);
        Assert.Contains("Mass of oxygen\u00a0/", students, StringComparison.Ordinal);
    }

    [Fact]
    public void Where_questions_are_answered_from_a_curve_the_students_have_one_that_fits_its_groups_row()
    {
        Paper questions = CoverQuestions.Of(StudentSheetTests.Setting(StudentSheetTests.Plans["marble-and-acid"]));
        string text = Written.Of(questions);
        string group = text[(text.IndexOf("Mass against time of group ", StringComparison.Ordinal) + 27)..].Split('.')[0];
        double[] row = [.. Data(questions).Rows.Single(r => r[0].Text.Text == group).Skip(1).Select(c => Number(c.Text.Text))];
        PaperTable curve = Written.Blocks(questions.Content).OfType<PaperBlock.Table>().Select(t => t.Content).Single(t => t.Columns[0].Heading.Text.StartsWith("Time", StringComparison.Ordinal));
        (double Time, double Mass)[] points = [.. curve.Rows.SelectMany(r => r.Chunk(2)).Where(p => p[0].Text.Text.Length > 0).Select(p => (Number(p[0].Text.Text), Number(p[1].Text.Text))).OrderBy(p => p.Item1)];
        // Every half minute between 0 and 10.
        Assert.Equal(Enumerable.Range(1, 19).Select(i => i / 2.0), points.Select(p => p.Time));
        // Between the first reading of the row and the last, but for what the balance and a draught do.
        Assert.All(points, p => Assert.InRange(p.Mass, row[^1] - 0.05, row[^2] + 0.05));
        Assert.True(points[0].Mass > points[^1].Mass + 0.1);
    }

    // Common practice: what is shown once is weighed once, and no group is told of.
    [Theory]
    [InlineData("copper-oxide-reduction")]
    [InlineData("zinc-chloride")]
    public void Of_a_demonstration_there_is_one_set_of_readings_and_no_group(string id)
    {
        PaperSetting setting = StudentSheetTests.Setting(StudentSheetTests.Plans[id]);
        PaperTable data = Table(CoverSheet.Of(setting), "Reading");
        Assert.All(data.Rows, r => Assert.Matches(@"^\d+\.\d\d$", r[1].Text.Text));
        Assert.Single(Table(CoverKey.Of(setting), Written.Blocks(CoverKey.Of(setting).Content).OfType<PaperBlock.Table>().First().Content.Columns[0].Heading.Text).Rows);
        Assert.All(Papers(setting), paper =>
        {
            string text = Written.Of(paper);
            Assert.DoesNotMatch(@"(?i)made-up groups|groups? of the table|one group|group taken|odd groups|\bGroup\b", text.Replace("A group", "", StringComparison.Ordinal));
            Assert.Contains("Simulated data", text, StringComparison.Ordinal);
        });
    }

    private static double Figures(double value) => double.Parse(value.ToString("G3", CultureInfo.InvariantCulture), CultureInfo.InvariantCulture);

    private static double Number(string text) => double.Parse(text.Replace('−', '-'), CultureInfo.InvariantCulture);

    private static Paper[] Papers(PaperSetting setting) => [CoverSheet.Of(setting), CoverQuestions.Of(setting), CoverKey.Of(setting)];

    private static PaperSetting Seeded(ulong seed) => new(Planned.Magnesium(12), PaperOccasion.Unsaid, null, isChecked: false, seed);

    private static PaperTable Data(Paper paper) => Table(paper, "Group");

    private static string Cells(PaperTable table) => string.Join(' ', table.Rows.SelectMany(r => r.Select(c => c.Text.Text)));

    private static PaperTable Table(Paper paper, string first) =>
        Written.Blocks(paper.Content).OfType<PaperBlock.Table>().Select(t => t.Content).Single(t => t.Columns[0].Heading.Text == first);
}
