using Calx.Measurement.Numbers;
using Calx.Practicals.Definition;
using Calx.Practicals.Marking;

namespace Calx.Engine.Tests.Practicals.Gauges;

/// <summary>Answers over readings of clock, ammeter and thermometer. The right values and the usual slips (minutes for seconds, 273 added
/// to a rise, the fuel's mass for the water's, a lost sign) are worked out here from the readings; that they are usual is common practice, no source.</summary>
public class GaugeMarkingTests
{
    private static readonly Dictionary<string, string> Burn = new() { ["volume"] = "100", ["before"] = "143.27", ["start"] = "19.5", ["end"] = "43.0", ["after"] = "142.53" };

    private static readonly Dictionary<string, string> Right = new()
    {
        ["massFuel"] = "0.74", ["riseRead"] = "23.5", ["heatCaught"] = "9.82", ["molesFuel"] = "0.0161", ["enthalpyFound"] = "-611", ["shareCaught"] = "44.7",
    };

    [Fact]
    public void A_right_student_gets_all_marks()
    {
        MarkedWork marked = Mark(GaugeBench.Combustion, Burn, Right);

        Assert.All(marked.Answers, a => Assert.True(a.IsAccepted, $"{a.Answer.Id}: {a.Verdict}"));
        Assert.Equal(marked.Of, marked.Total);
    }

    // 0.74 x 4.18 x 23.5 / 1000; 100 x 4.18 x (23.5 + 273) / 1000.
    [Theory]
    [InlineData("heatCaught", "0.0727", "wrong-mass")]
    [InlineData("heatCaught", "124", "kelvin-added")]
    [InlineData("enthalpyFound", "611", "sign-lost")]
    public void A_usual_slip_is_named(string answer, string written, string idea)
    {
        AnswerMark mark = Mark(GaugeBench.Combustion, Burn, new(Right) { [answer] = written }).Answers.Single(a => a.Answer.Id == answer);

        Assert.False(mark.IsAccepted);
        Assert.Equal(idea, mark.Ideas!.Candidates[0].Ideas[0].Id);
    }

    // 0.38 A for 1260 s are 478.8 C; 0.38 x 21 is what minutes give.
    [Fact]
    public void Minutes_for_seconds_are_a_unit_that_was_not_converted_and_are_carried_forward()
    {
        Dictionary<string, string> run = new() { ["anodeBefore"] = "12.83", ["cathodeBefore"] = "10.47", ["current"] = "0.38", ["time"] = "1260", ["cathodeAfter"] = "10.61", ["anodeAfter"] = "12.67" };
        MarkedWork marked = Mark(GaugeBench.Electrolysis, run, new() { ["chargeRead"] = "7.98", ["molesElectrons"] = "0.0000827" });

        Assert.Equal("unit-slip", marked.Answers.Single(a => a.Answer.Id == "chargeRead").Ideas!.Candidates[0].Ideas[0].Id);
        Assert.True(marked.Answers.Single(a => a.Answer.Id == "molesElectrons").IsAccepted);
    }

    private static MarkedWork Mark(Practical practical, Dictionary<string, string> readings, Dictionary<string, string> answers) =>
        new Marker(practical, MarkingPolicy.Usual, [GaugeBench.Weights], [.. answers.Keys]).Mark([new StudentWork(
            "1", readings.ToDictionary(r => r.Key, r => (IReadOnlyList<WrittenNumber>)[GaugeBench.Number(r.Value)]), answers)]).Works[0];
}
