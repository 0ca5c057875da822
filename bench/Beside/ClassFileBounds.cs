using System.Diagnostics;
using System.Globalization;
using Calx.Bench.Benchmarks;
using Calx.Practicals.Definition;
using Calx.Practicals.Findings;

namespace Calx.Bench.Beside;

/// <summary>A class's file from bytes to findings. No general-purpose library does the same, so bounds stand for a peer.</summary>
internal static class ClassFileBounds
{
    private const double MostSecondsForTwelve = 0.030;
    private const double MostSecondsForTenThousand = 2;

    // Four times the groups, and no more than that and a tenth.
    private const double MostGrowth = 4.4;

    public static bool Run(SideBySide side)
    {
        Practical practical = BuiltInPracticals.Find("magnesium-oxide")!;
        Measured twelve = Measure(practical, 12, 50 * side.Passes);
        Measured quarter = Measure(practical, 2_500, side.Passes);
        Measured whole = Measure(practical, 10_000, side.Passes);
        double growth = (double)whole.Bytes / quarter.Bytes;
        Console.WriteLine($"class file, bytes to findings: medians, {Environment.ProcessorCount} processors");
        Print(twelve, MostSecondsForTwelve);
        Print(quarter, double.NaN);
        Print(whole, MostSecondsForTenThousand);
        Console.WriteLine(string.Create(
            CultureInfo.InvariantCulture, $"  allocated bytes, 10 000 groups to 2 500: {growth:f2} (at most {MostGrowth})"));
        return twelve.Seconds <= MostSecondsForTwelve
            && whole.Seconds <= MostSecondsForTenThousand
            && growth <= MostGrowth
            && twelve.Ok && quarter.Ok && whole.Ok;
    }

    private static Measured Measure(Practical practical, int groups, int runs)
    {
        byte[] file = ClassFileText.Bytes(groups);
        double[] seconds = new double[runs];
        bool ok = Agrees(ClassFileBenchmark.Analyse(practical, file), groups);
        long before = GC.GetTotalAllocatedBytes(precise: true);
        for (int i = 0; i < runs; i++)
        {
            var one = Stopwatch.StartNew();
            ok &= Agrees(ClassFileBenchmark.Analyse(practical, file), groups);
            seconds[i] = one.Elapsed.TotalSeconds;
        }

        long bytes = (GC.GetTotalAllocatedBytes(precise: true) - before) / runs;
        Array.Sort(seconds);
        return new Measured(groups, seconds[runs / 2], bytes, ok);
    }

    // The class is drawn with all but 0 to 2 % of its magnesium burnt: 0.99 moles of oxygen for 1 of magnesium on average.
    private static bool Agrees(ClassFindings findings, int groups) =>
        findings.Groups.Count == groups
        && findings.Readings.Rejected.Count == 0
        && findings.Class.Find("moleRatio") is { } ratio
        && Math.Abs(ratio.Value - 0.99) < Math.Max(4 * ratio.StandardUncertainty, 0.01);

    private static void Print(Measured measured, double most)
    {
        string bound = double.IsNaN(most) ? "" : string.Create(CultureInfo.InvariantCulture, $" (at most {1000 * most:n0} ms)");
        Console.WriteLine(string.Create(
            CultureInfo.InvariantCulture,
            $"  {measured.Groups,6:n0} groups {1000 * measured.Seconds,10:n2} ms{bound} {measured.Bytes,15:n0} bytes  checks {(measured.Ok ? "ok" : "FAILED")}"));
    }

    private sealed record Measured(int Groups, double Seconds, long Bytes, bool Ok);
}
