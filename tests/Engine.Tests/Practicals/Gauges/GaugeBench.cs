using Calx.Chemistry.Elements;
using Calx.Measurement.Numbers;
using Calx.Measurement.Weighing;
using Calx.Practicals.Definition;
using Calx.Practicals.Inference;
using Calx.Practicals.Readings;

namespace Calx.Engine.Tests.Practicals.Gauges;

/// <summary>Practicals with readings of other quantities than mass, and groups' readings of them.</summary>
internal static class GaugeBench
{
    public static Practical Electrolysis => BuiltInPracticals.Find("copper-electrolysis")!;

    public static Practical Combustion => BuiltInPracticals.Find("alcohol-combustion")!;

    public static AtomicWeights Weights => AtomicWeights.Iupac2024;

    /// <summary>A balance of 0.01 g with the usual scatter.</summary>
    public static BalanceReport Balance { get; } = BalanceReport.Of(new Balance(0.01));

    /// <summary>A practical whose text is another.</summary>
    public static Practical With(Practical practical, params (string Old, string New)[] changes)
    {
        PracticalReading reading = Read(practical, changes);
        Assert.Empty(reading.Faults);
        return reading.Practical!;
    }

    /// <summary>The same, faults and all.</summary>
    public static PracticalReading Read(Practical practical, params (string Old, string New)[] changes)
    {
        string text = practical.SourceText;
        foreach ((string old, string with) in changes)
        {
            Assert.Contains(old, text, StringComparison.Ordinal);
            text = text.Replace(old, with, StringComparison.Ordinal);
        }

        return PracticalReader.Read(text, "x.yaml");
    }

    /// <summary>Readings in the practical's units.</summary>
    public static GroupReadings Group(Practical practical, params (string Id, string Digits)[] readings) => new(
        "1", null, [.. readings.Select(r => new TakenReading(r.Id, 1, Number(r.Digits), practical.Reading(r.Id).Unit))], []);

    public static WrittenNumber Number(string digits)
    {
        Assert.True(WrittenNumber.TryParse(digits, out WrittenNumber number));
        return number;
    }

    public static QuantityEstimate Find(Practical practical, GroupReadings group, string quantity, BalanceReport? balance = null) =>
        Assert.IsType<QuantityEstimate>(new GroupEstimator(practical, balance ?? Balance, Weights).Estimate(group).Single(q => q.Quantity.Id == quantity));
}
