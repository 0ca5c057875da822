using Calx.Engine.Tests.Practicals.Inference;
using Calx.Measurement.Weighing;
using Calx.Practicals.CatchUp;
using Calx.Practicals.Clock;
using Calx.Practicals.Definition;

namespace Calx.Engine.Tests.Practicals.CatchUp;

/// <summary>Students and plans for the tests of catch-up data.</summary>
internal static class Packs
{
    public const ulong Seed = 2026;

    /// <summary>The practical in an ordinary class.</summary>
    public static PlanSettings Plan(Practical practical, double resolutionInGrams = 0.01, double repeatabilityInDivisions = Balance.UsualRepeatabilityInDivisions) =>
        new(practical, 12, [new Balance(resolutionInGrams, repeatabilityInDivisions)], 60);

    /// <summary>So many invented students.</summary>
    public static CatchUpStudent[] Students(int count) => [.. Enumerable.Range(1, count).Select(i => CatchUpStudent.Named($"Student {i}"))];

    /// <summary>The data alone, without what is worked out from them.</summary>
    public static DrawnPack[] Drawn(PlanSettings plan, int count, double oddShare = CatchUpOptions.UsualOddShare, ulong seed = Seed) =>
        CatchUpPacks.Drawn(new PackDrawer(plan, Given.Weights, oddShare), Students(count), new CatchUpOptions(seed, oddShare), []);

    /// <summary>Everything.</summary>
    public static IReadOnlyList<CatchUpPack> Of(PlanSettings plan, IReadOnlyList<CatchUpStudent> students, int threads = 0) =>
        CatchUpPacks.Of(plan, Given.Weights, students, new CatchUpOptions(Seed, threads: threads));

    /// <summary>All that a pack says, as text.</summary>
    public static string Text(CatchUpPack pack) => string.Join('\n',
    [
        pack.Student.Name,
        .. pack.Readings.Select(r => r.ToString()),
        .. pack.Truth.Planted.Select(p => p.ToString()),
        .. pack.Decisions.Select(d => d.ToString()),
        .. pack.Answers.Select(a => FormattableString.Invariant($"{a.Heating} {a.Answer.Id} {a.Value:R} {a.Low:R} {a.High:R}")),
    ]);
}
