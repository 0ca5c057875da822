using System.Collections.Concurrent;
using Calx.Chemistry.Elements;
using Calx.Measurement.Weighing;
using Calx.Papers.Documents;
using Calx.Papers.Handouts;
using Calx.Papers.Handouts.CatchUp;
using Calx.Papers.Tests.Handouts;
using Calx.Practicals.CatchUp;
using Calx.Practicals.Clock;
using Calx.Practicals.Definition;
using Calx.Practicals.Findings;
using Calx.Practicals.Planning;
using Calx.Practicals.Texts;

namespace Calx.Papers.Tests.Texts;

/// <summary>What the engine works out in the invented language: the same plans, classes and packs as elsewhere.</summary>
internal static class PseudoEngine
{
    private static readonly ConcurrentDictionary<object, Lazy<object>> Done = new(ReferenceEqualityComparer.Instance);

    private static readonly Lazy<IReadOnlyDictionary<string, Plan>> AllPlans = new(() => StudentSheetTests.Plans.ToDictionary(p => p.Key, p => In(p.Value)));

    private static readonly Lazy<IReadOnlyDictionary<string, IReadOnlyList<CatchUpPack>>> AllPacks = new(() => Shelf.Three.ToDictionary(id => id, id =>
        CatchUpPacks.Of(CatchUpPlan(id), AtomicWeights.Iupac2024, [CatchUpStudent.Named("Amir K"), CatchUpStudent.Numbered(7, "", PseudoLanguage.Engine)], new CatchUpOptions(2026))));

    /// <summary>A plan of each practical.</summary>
    public static IReadOnlyDictionary<string, Plan> Plans => AllPlans.Value;

    /// <summary>Two packs of each practical.</summary>
    public static IReadOnlyDictionary<string, IReadOnlyList<CatchUpPack>> Packs => AllPacks.Value;

    /// <summary>The papers of those packs.</summary>
    public static IReadOnlyList<Paper> CatchUpPapers(string id, SupportLevel level, PaperLook look) => Calx.Papers.Handouts.CatchUp.CatchUpPapers.Of(
        new CatchUpSetting(CatchUpPlan(id), PaperOccasion.Unsaid with { ClassName = "9F" }, level, look, isChecked: false), Packs[id]);

    /// <summary>The same plan in it.</summary>
    public static Plan In(Plan plan) => Once(plan, () => Plan.Of(
        plan.Settings.WithLanguage(PseudoLanguage.Engine), AtomicWeights.Iupac2024,
        new PlanOptions(lessons: 100, looksForWays: plan.Ways is not null, wanted: [.. plan.Wanted.Select(w => w.Id)])));

    /// <summary>The same findings in it.</summary>
    public static ClassFindings In(ClassFindings findings) => Once(findings, () => ClassAnalysis.Of(
        findings.Practical, findings.Readings, AtomicWeights.Iupac2024,
        new AnalysisOptions(findings.Groups.Any(g => g.Diagnosis is not null), []) { Language = PseudoLanguage.Engine }));

    private static T Once<T>(T of, Func<T> made)
        where T : class => (T)Done.GetOrAdd(of, _ => new Lazy<object>(made)).Value;

    private static PlanSettings CatchUpPlan(string id) =>
        new PlanSettings(BuiltInPracticals.Find(id)!, 12, [new Balance(0.01)], 100).WithLanguage(PseudoLanguage.Engine);
}
