using System.Globalization;
using Calx.Papers.Documents;
using Calx.Papers.Handouts;
using Calx.Papers.Tests.Reports;
using Calx.Practicals.Definition;

namespace Calx.Papers.Tests.Handouts;

/// <summary>The teacher's key.</summary>
public sealed class AnswerKeyTests
{
    /// <summary>Worked by hand from the three readings of the key itself; molar masses Mg 24.305, O 15.999 (IUPAC, abridged).</summary>
    [Fact]
    public void Worked_values_follow_from_the_readings_above_them()
    {
        Paper key = AnswerKey.Of(StudentSheetTests.Setting(Planned.Magnesium(12)));
        double[] read = Readings(key);
        Assert.Equal(3, read.Length);
        PaperTable worked = Table(key, "Answer");
        double magnesium = Math.Round(read[1] - read[0], 2), oxygen = Math.Round(read[2] - read[1], 2);
        Assert.Equal(magnesium.ToString("F2", CultureInfo.InvariantCulture), Value(worked, "Mass of magnesium"));
        Assert.Equal(oxygen.ToString("F2", CultureInfo.InvariantCulture), Value(worked, "Mass of oxygen"));
        Assert.Equal(magnesium / 24.305, Number(Value(worked, "Moles of magnesium")), 0.00001);
        Assert.Equal(oxygen / 15.999, Number(Value(worked, "Moles of oxygen")), 0.00001);
        Assert.Equal(magnesium / 24.305 / (oxygen / 15.999), Number(Value(worked, "Ratio")), 0.005);
    }

    [Fact]
    public void Every_mark_of_answers_and_questions_is_counted()
    {
        Practical practical = BuiltInPracticals.Find("magnesium-oxide")!;
        string text = Written.Of(AnswerKey.Of(StudentSheetTests.Setting(Planned.Magnesium(12))));
        Assert.All(practical.Sheet.Questions.SelectMany(q => q.Expected), e => Assert.Contains(e[1..], text, StringComparison.Ordinal));
        // Five answers of a mark each, and 2 + 1 + 1 + 2 + 2 points in words.
        Assert.Contains("13 marks in all.", text, StringComparison.Ordinal);
    }

    [Fact]
    public void An_answer_without_its_reading_is_left_out()
    {
        PaperTable worked = Table(AnswerKey.Of(StudentSheetTests.Setting(Planned.WithoutEmpty)), "Answer");
        Assert.Equal(["Mass of oxygen\u00a0/\u00a0g", "Moles of oxygen atoms\u00a0/\u00a0mol"], worked.Rows.Select(r => r[0].Text.Text));
    }

    /// <summary>Worked by hand from the readings of the key: masses compared instead of moles; the ratio upside down; O2 counted as O.</summary>
    [Fact]
    public void The_usual_wrong_answers_follow_from_the_same_readings()
    {
        Paper key = AnswerKey.Of(StudentSheetTests.Setting(Planned.Magnesium(12)));
        double[] read = Readings(key);
        double magnesium = read[1] - read[0], oxygen = read[2] - read[1], ratio = magnesium / 24.305 / (oxygen / 15.999);
        (double Value, string Reveals)[] said = [.. Table(key, "Asked for").Rows.Select(r => (Number(r[1].Text.Text), r[2].Text.Text))];
        void Says(double value, string words) => Assert.Contains(said, s => Math.Abs(s.Value - value) <= 0.006 * value && s.Reveals.Contains(words, StringComparison.OrdinalIgnoreCase));
        Says(magnesium / oxygen, "masses were compared instead of moles");
        Says(1 / ratio, "upside down");
        Says(2 * ratio, "molar mass of the molecule");
        Says(read[1], "vessel was not taken away");
        Assert.DoesNotContain(said, s => Math.Abs(s.Value - ratio) < 0.004 * ratio);
    }

    private static double[] Readings(Paper key) => [.. Table(key, "Mass of empty crucible and lid\u00a0/\u00a0g").Rows.Single().Select(c => Number(c.Text.Text))];

    private static PaperTable Table(Paper paper, string first) =>
        Written.Blocks(paper.Content).OfType<PaperBlock.Table>().Select(t => t.Content).Single(t => t.Columns[0].Heading.Text == first);

    private static string Value(PaperTable table, string begins) => table.Rows.First(r => r[0].Text.Text.StartsWith(begins, StringComparison.Ordinal))[2].Text.Text;

    private static double Number(string text) => double.Parse(text, CultureInfo.InvariantCulture);
}
