using Calx.Chemistry.Elements;
using Calx.Measurement.Numbers;
using Calx.Practicals.Definition;
using Calx.Practicals.Findings;
using Calx.Practicals.Readings;

namespace Calx.Engine.Tests.Practicals.Inference;

/// <summary>Readings as a class would give them, for the tests of what follows from readings.</summary>
internal static class Given
{
    public static Practical Magnesium => BuiltInPracticals.Find("magnesium-oxide")!;

    public static Practical Hydrate => BuiltInPracticals.Find("copper-sulfate-hydrate")!;

    public static Practical Hydrogencarbonate => BuiltInPracticals.Find("sodium-hydrogencarbonate")!;

    /// <summary>What masses show, without asking for causes.</summary>
    public static AnalysisOptions NoCauses { get; } = new(Causes: false, []);

    public static AtomicWeights Weights => AtomicWeights.Iupac2024;

    /// <summary>One group; an id ending in a digit is a repeat: <c>after2</c>.</summary>
    public static GroupReadings Group(string name, params (string Id, string Digits)[] readings) => new(
        name,
        trial: null,
        [.. readings.Where(r => !IsColumn(r.Id)).Select(Taken)],
        [.. readings.Where(r => IsColumn(r.Id)).Select(Taken)]);

    public static ClassReadings Class(Practical practical, params GroupReadings[] groups) =>
        Class(practical, BalanceOptions.NothingGiven, groups);

    public static ClassReadings Class(Practical practical, BalanceOptions options, params GroupReadings[] groups) =>
        new(practical.Id, groups, new BalanceReport(options, new Dictionary<string, decimal> { ["after"] = 0.01m }));

    private static bool IsColumn(string id) => id.Contains("Column", StringComparison.Ordinal);

    private static TakenReading Taken((string Id, string Digits) reading)
    {
        Assert.True(WrittenNumber.TryParse(reading.Digits, out WrittenNumber value));
        string bare = reading.Id.TrimEnd('2', '3');
        int occurrence = bare.Length == reading.Id.Length ? 1 : reading.Id[^1] - '0';
        return new TakenReading(bare, occurrence, value);
    }
}
