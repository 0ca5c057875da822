using Calx.Practicals.Definition;

namespace Calx.Engine.Tests.Practicals.Inference.Posterior;

/// <summary>The magnesium practical cut down to two faults and no other variation, small enough to be counted through.</summary>
internal static class SmallBench
{
    public const double RateLost = 0.3;
    public const double RateDamp = 0.2;
    public const double MostLost = 0.4;
    public const double MostDamp = 0.1;

    private const string Faults = """
        faults:
          - cause: product-lost
            label: product lost
            rate: 0.3
            set: { smoke: { rectangular: [0, 0.4] } }
            standing: judgement
          - cause: damp-vessel
            label: water driven off
            rate: 0.2
            set: { damp: { rectangular: [0, 0.1] } }
            standing: judgement


        """;

    public static Practical Practical { get; } = Read();

    private static Practical Read()
    {
        string text = BuiltInPracticals.Find("magnesium-oxide")!.SourceText
            .Replace("law: { beta: [1.3, 60, 0, 1] }", "law: { fixed: 0 }", StringComparison.Ordinal)
            .Replace("law: { beta: [60, 1.5, 0, 1] }", "law: { fixed: 1 }", StringComparison.Ordinal)
            .Replace("law: { beta: [1.2, 100, 0, 1] }", "law: { fixed: 0 }", StringComparison.Ordinal)
            .Replace(", gives: fired", "", StringComparison.Ordinal)
            .Replace(", gives: cleaned-ribbon", "", StringComparison.Ordinal)
            .Replace("not-all-reacted: 1, product-lost: 0.5", "product-lost: 0.5", StringComparison.Ordinal);
        int faults = text.IndexOf("faults:\n", StringComparison.Ordinal);
        int steps = text.IndexOf("steps:\n", StringComparison.Ordinal);
        PracticalReading reading = PracticalReader.Read(string.Concat(text.AsSpan(0, faults), Faults, text.AsSpan(steps)), "small.yaml");
        Assert.Empty(reading.Faults);
        return reading.Practical!;
    }
}
