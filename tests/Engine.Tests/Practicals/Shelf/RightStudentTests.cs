using Calx.Chemistry.Elements;
using Calx.Measurement.Numbers;
using Calx.Practicals.Definition;
using Calx.Practicals.Marking;

namespace Calx.Engine.Tests.Practicals.Shelf;

/// <summary>Whoever works every value of a practical out rightly, from the readings of its worked example, earns every mark.</summary>
public sealed class RightStudentTests
{
    private static readonly AtomicWeights School = AtomicWeightSets.Named("school-1dp");

    public static TheoryData<string> Ids => [.. BuiltInPracticals.Ids];

    [Theory]
    [MemberData(nameof(Ids))]
    public void Every_value_rightly_worked_out_earns_its_marks_and_a_wrong_one_does_not(string id)
    {
        Practical practical = BuiltInPracticals.Find(id)!;
        ShelfTables.Example example = ShelfTables.Examples.First(e => e.Practical == id);
        var readings = practical.Readings.Where(r => example.Readings.ContainsKey(r.Id)).ToDictionary(
            r => r.Id, r => (IReadOnlyList<WrittenNumber>)[WrittenNumber.TryParse(example.Readings[r.Id], out WrittenNumber number) ? number : default]);
        Dictionary<string, string> right = Worked(practical, example);
        // What is read off a curve is held to its own tests.
        string[] asked = [.. right.Keys];
        Assert.True(asked.Length >= 2);
        var marker = new Marker(practical, MarkingPolicy.Usual with { FiguresPenalty = 0 }, [School], asked);

        MarkedWork marked = marker.Mark([new StudentWork("1", readings, right)]).Works[0];
        Assert.All(marked.Answers, a => Assert.True(a.IsAccepted, $"{a.Answer.Id} {a.Given}: {a.Verdict}, expected {a.Expected}"));
        // Six figures are too many for the one mark that asks for the right number of them.
        Assert.Equal(marked.Of - marked.Answers.Sum(a => a.Answer.MarksFor.Figures), marked.Total);

        // Twice the last value is no rounding of it.
        string last = asked[^1];
        right[last] = Written(2 * ShelfTables.Number(right[last]));
        Assert.False(marker.Mark([new StudentWork("1", readings, right)]).Works[0].Answers.Single(a => a.Answer.Id == last).IsAccepted);
    }

    private static Dictionary<string, string> Worked(Practical practical, ShelfTables.Example example)
    {
        var masses = new MolarMasses(School);
        var known = example.Readings.ToDictionary(r => r.Key, r => ShelfTables.Number(r.Value));
        var answers = new Dictionary<string, string>();
        foreach (AnswerDefinition answer in practical.AllAnswers.OfType<AnswerDefinition>().Where(a => a.Formula.Names.All(known.ContainsKey)))
        {
            known[answer.Id] = answer.Formula.Evaluate(name => known[name], masses.Of);
            answers[answer.Id] = Written(known[answer.Id]);
        }

        return answers;
    }

    private static string Written(double value) => value.ToString("G6", System.Globalization.CultureInfo.InvariantCulture);
}
