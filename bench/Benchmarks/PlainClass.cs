using Calx.Measurement.Weighing;
using Calx.Practicals.Clock;
using Calx.Practicals.Definition;
using Calx.Practicals.Planning;

namespace Calx.Bench.Benchmarks;

/// <summary>Twelve groups on two balances: set up, weigh, heat, cool, weigh, reheat, cool, weigh, all from the first minute and
/// nothing else: the class that the peers simulate too.</summary>
internal static class PlainClass
{
    private const string Steps = """
        steps:
          - { id: set-up, label: set up, minutes: [4, 6, 12], kit: {}, per: trial, standing: judgement }
          - { id: weigh-before, label: weigh, minutes: [1, 2, 4], kit: { balance: 1 }, reading: before, standing: judgement }
          - { id: heat, label: heat, minutes: [8, 10, 15], kit: { burner: 1 }, round: first, standing: judgement }
          - { id: reheat, label: reheat, minutes: [3, 5, 7], kit: { burner: 1 }, round: again, standing: judgement }
          - { id: cool, label: cool, minutes: [5, 7, 10], kit: {}, round: each, standing: judgement }
          - { id: weigh-after, label: weigh, minutes: [1, 2, 4], kit: { balance: 1 }, reading: after, round: each, standing: judgement }

        classroom: { gasOff: 0, late: 0, lateBy: [1, 4, 10], newStart: [1, 2, 4], standing: judgement }


        """;

    /// <summary>The class, its reheats decided by readings or all alike.</summary>
    public static PlanSettings Settings()
    {
        string text = BuiltInPracticals.Find("magnesium-oxide")!.SourceText.Replace("breaks: 0.04, startsAgain: true", "breaks: 0.04", StringComparison.Ordinal);
        int steps = text.IndexOf("# Times in min", StringComparison.Ordinal);
        int kit = text.IndexOf("kit:\n  - {", StringComparison.Ordinal);
        PracticalReading reading = PracticalReader.Read(string.Concat(text.AsSpan(0, steps), Steps, text.AsSpan(kit)), "plain-class.yaml");
        var balance = new Balance(0.01);
        return new PlanSettings(reading.Practical!, 12, [balance, balance], 56);
    }
}
