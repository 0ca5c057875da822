using System.Text;
using BenchmarkDotNet.Attributes;
using Calx.Chemistry.Elements;
using Calx.Measurement.Weighing;
using Calx.Papers.Documents;
using Calx.Papers.Documents.Html;
using Calx.Papers.Documents.Word;
using Calx.Papers.Handouts;
using Calx.Papers.Handouts.CatchUp;
using Calx.Practicals.CatchUp;
using Calx.Practicals.Clock;
using Calx.Practicals.Definition;
using Calx.Practicals.Planning;

namespace Calx.Bench.Benchmarks;

/// <summary>All papers of a lesson for a class of thirty, of whom each gets a catch-up pack besides: every kind, student sheets at three
/// levels, for a word processor, to print and as a workbook; from the plan on.</summary>
public class PapersBenchmark
{
    private const int Students = 30;

    private static readonly Practical Practical = BuiltInPracticals.Find("magnesium-oxide")!;

    private static readonly CatchUpStudent[] Away = [.. Enumerable.Range(1, Students).Select(i => CatchUpStudent.Named($"Student {i}"))];

    /// <summary>The plan and all of it, as bytes.</summary>
    [Benchmark]
    public long WholeSet() => LessonPapers() + CatchUp();

    /// <summary>Everything but the packs.</summary>
    [Benchmark]
    public long LessonPapers()
    {
        Plan plan = Plan.Of(Settings(), AtomicWeights.Iupac2024, new PlanOptions(looksForWays: false));
        var setting = new PaperSetting(plan, PaperOccasion.Unsaid with { ClassName = "9F" }, null, isChecked: true);
        PaperSet papers = PaperSet.Of(setting, Enum.GetValues<PaperKind>(), Enum.GetValues<SupportLevel>());
        return Written(papers.Documents) + papers.Workbooks.Sum(b => b.Bytes().LongLength);
    }

    /// <summary>The packs and their key.</summary>
    [Benchmark]
    public long CatchUp()
    {
        IReadOnlyList<CatchUpPack> packs = CatchUpPacks.Of(Settings(), AtomicWeights.Iupac2024, Away, new CatchUpOptions(2026));
        return Written(CatchUpPapers.Of(
            new CatchUpSetting(Settings(), PaperOccasion.Unsaid with { ClassName = "9F" }, SupportLevel.Standard, PaperLook.Usual, isChecked: true), packs));
    }

    private static PlanSettings Settings() => new(Practical, 15, [new Balance(0.01), new Balance(0.01)], 100);

    private static long Written(IReadOnlyList<Paper> papers) =>
        papers.AsParallel().Sum(p => PaperWord.Of(p).LongLength + Encoding.UTF8.GetByteCount(PaperHtml.Of(p)));
}
