using System.Collections.Concurrent;
using Calx.Chemistry.Elements;
using Calx.Measurement.Weighing;
using Calx.Practicals.Clock;
using Calx.Practicals.Definition;
using Calx.Practicals.Planning;

namespace Calx.Papers.Tests.Reports;

/// <summary>Invented plans, each worked out once.</summary>
internal static class Planned
{
    private static readonly ConcurrentDictionary<string, Lazy<Plan>> Done = new(StringComparer.Ordinal);

    private static readonly Balance Hundredths = new(0.01);

    /// <summary>Burning magnesium by so many groups on two balances in 60 min, far too short.</summary>
    public static Plan Magnesium(int groups) =>
        Once($"magnesium {groups}", () => Of(new PlanSettings(Find("magnesium-oxide"), groups, [Hundredths, Hundredths], 60)));

    /// <summary>The same by six groups, as much as possible done before or after, in 120 min: time to spare.</summary>
    public static Plan Easy => Once("easy", () => Of(new PlanSettings(Find("magnesium-oxide"), 6, [Hundredths, Hundredths, Hundredths], 120)
        .WithPrepared(true).WithHeatings(1).WithMoved("work-out")));

    /// <summary>On a balance of 0.1 g, the empty crucible never weighed: one conclusion cannot be reached at all.</summary>
    public static Plan WithoutEmpty => Once("without empty", () => Of(
        new PlanSettings(Find("magnesium-oxide"), 4, [new Balance(0.1)], 60).WithUnread("empty")));

    /// <summary>The one conclusion asked for cannot be reached.</summary>
    public static Plan Hopeless => Once("hopeless", () => Plan.Of(
        new PlanSettings(Find("magnesium-oxide"), 4, [Hundredths], 60).WithUnread("empty"), AtomicWeights.Iupac2024,
        new PlanOptions(wanted: ["one-to-one"], lessons: 100, looksForWays: false)));

    /// <summary>A hydrate, two trials, every second group five minutes later, one balance: long queues.</summary>
    public static Plan Hydrate => Once("hydrate", () => Of(
        new PlanSettings(Find("copper-sulfate-hydrate"), 18, [Hundredths], 120).WithTrials(2).WithStagger(5)));

    /// <summary>Ways out looked for.</summary>
    public static Plan WithWays => Once("ways", () => Plan.Of(
        new PlanSettings(Find("magnesium-oxide"), 2, [Hundredths, Hundredths], 100), AtomicWeights.Iupac2024, new PlanOptions(lessons: 100)));

    /// <summary>A file of one's own whose labels hold what HTML takes for markup.</summary>
    public static Plan Hostile => Once("hostile", () => Of(new PlanSettings(Read(Find("magnesium-oxide").SourceText
        .Replace("label: let the teacher look before lighting", "label: \"<script>look()</script> & 'light'\"", StringComparison.Ordinal)
        .Replace("label: tongs whose jaws meet", "label: '<img src=x> tongs'", StringComparison.Ordinal)
        .Replace("label: the mass rises when magnesium burns", "label: '<b>the mass rises</b>'", StringComparison.Ordinal)
        .Replace("hazard: nuisance dust", "hazard: '<i>dust</i>'", StringComparison.Ordinal)
        .Replace("title: Burning magnesium in a crucible", "title: 'Burning <magnesium>'", StringComparison.Ordinal)), 3, [Hundredths], 60)));

    public static IEnumerable<Plan> All => [Magnesium(1), Magnesium(12), Easy, WithoutEmpty, Hopeless, Hydrate, WithWays, Hostile];

    private static Plan Once(string name, Func<Plan> plan) => Done.GetOrAdd(name, _ => new Lazy<Plan>(plan)).Value;

    private static Plan Of(PlanSettings settings) =>
        Plan.Of(settings, AtomicWeights.Iupac2024, new PlanOptions(lessons: 100, looksForWays: false));

    private static Practical Find(string id) => BuiltInPracticals.Find(id)!;

    private static Practical Read(string yaml) => Assert.IsType<Practical>(PracticalReader.Read(yaml, "own.yaml").Practical);
}
