using Calx.Engine.Tests.Practicals.Inference;
using Calx.Practicals.Definition;
using Calx.Practicals.Model;

namespace Calx.Engine.Tests.Practicals.Model;

/// <summary>Reactions whose extent a gauge sets: the magnesium file with its burning event rewritten.</summary>
public class GaugeTests
{
    private const string Burning = "- react: { reaction: burning, in: inside, fraction: burnt * (1 - nitrided) / (1 - burnt * nitrided), escapes: smoke }";

    // 0.004 mol of magnesium takes up 0.004 mol of oxygen atoms: 0.004 · 15.999 g = 0.0640 g.
    [Fact]
    public void An_extent_in_moles_uses_up_just_that_much() =>
        Assert.Equal(0.0640, Gain(Read("- react: { reaction: burning, in: inside, extent: charge / 192970, escapes: smoke }", charge: "771.88")), 5e-5);

    [Fact]
    public void No_more_reacts_than_there_is() =>
        Assert.Equal(0.24 * 0.6583, Gain(Read("- react: { reaction: burning, in: inside, extent: charge, escapes: smoke }", charge: "5")), 5e-5);

    // First order over the time that the gauge shows: after one half-life half has reacted.
    [Fact]
    public void A_rate_law_over_time_is_a_fraction() =>
        Assert.Equal(
            0.5 * 0.24 * 0.6583,
            Gain(Read("- react: { reaction: burning, in: inside, fraction: 1 - exp(-0.0693147 * charge), escapes: smoke }", charge: "10")),
            5e-5);

    [Fact]
    public void A_gauge_is_set_before_it_is_used()
    {
        PracticalReading reading = PracticalReader.Read(
            Text("- react: { reaction: burning, in: inside, extent: charge, escapes: smoke }", charge: null), "x.yaml");

        Assert.Contains(reading.Faults, f => f.Reason.Contains("'charge' is used here before", StringComparison.Ordinal));
    }

    [Fact]
    public void A_fraction_and_an_extent_together_are_a_fault()
    {
        PracticalReading reading = PracticalReader.Read(
            Text("- react: { reaction: burning, in: inside, extent: charge, fraction: burnt, escapes: smoke }", charge: "1"), "x.yaml");

        Assert.Contains(reading.Faults, f => f.Reason.Contains("give one of them", StringComparison.Ordinal));
    }

    [Fact]
    public void Another_zero_at_one_reading_pulls_neither_way()
    {
        FaultDefinition fault = Given.Magnesium.Faults.Single(f => f.Cause == "zero-shifted");

        Assert.Null(Assert.IsType<FaultEffect.Zero>(fault.Effect).Reading);
        Assert.Equal(0, new IdealRun(Given.Magnesium, Given.Weights).DirectionOf(fault));
    }

    private static double Gain(Practical practical)
    {
        TrueMasses masses = new IdealRun(practical, Given.Weights).Masses;
        return masses.Last("after") - masses.Last("before");
    }

    private static Practical Read(string react, string charge)
    {
        PracticalReading reading = PracticalReader.Read(Text(react, charge), "x.yaml");
        Assert.Empty(reading.Faults);
        return reading.Practical!;
    }

    private static string Text(string react, string? charge)
    {
        string text = Given.Magnesium.SourceText;
        Assert.Contains(Burning, text, StringComparison.Ordinal);
        string set = charge is null ? string.Empty : $"- set: {{ gauge: charge, to: {charge} }}\n        ";
        return text.Replace(Burning, set + react, StringComparison.Ordinal)
            .Replace("readings:\n", "gauges:\n  - { id: charge, label: charge passed, unit: C }\n\nreadings:\n", StringComparison.Ordinal);
    }
}
