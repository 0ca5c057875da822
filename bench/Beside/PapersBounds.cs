using System.Diagnostics;
using System.Globalization;
using Calx.Bench.Benchmarks;

namespace Calx.Bench.Beside;

/// <summary>All papers of a lesson against what a teacher waits for: no general library does the same.</summary>
internal static class PapersBounds
{
    private const double MostMilliseconds = 3000;

    public static bool Run(SideBySide side)
    {
        var papers = new PapersBenchmark();
        Median(side.Passes, papers.LessonPapers, "papers of a lesson, from the plan on", double.PositiveInfinity);
        Median(side.Passes, papers.CatchUp, "30 catch-up packs and their key", double.PositiveInfinity);
        return Median(side.Passes, papers.WholeSet, "all of it", MostMilliseconds);
    }

    private static bool Median(int passes, Func<long> make, string what, double most)
    {
        var first = Stopwatch.StartNew();
        make();
        double cold = first.Elapsed.TotalMilliseconds;
        double[] times = new double[passes];
        TimeSpan before = Environment.CpuUsage.TotalTime;
        for (int i = 0; i < passes; i++)
        {
            var watch = Stopwatch.StartNew();
            make();
            times[i] = watch.Elapsed.TotalMilliseconds;
        }

        // On a machine that others keep busy, what the processors did says more than the clock.
        double processor = (Environment.CpuUsage.TotalTime - before).TotalMilliseconds / passes;
        Array.Sort(times);
        double median = times[passes / 2];
        string wanted = double.IsFinite(most) ? string.Create(CultureInfo.InvariantCulture, $" (wanted: {most:F0})") : "";
        Console.WriteLine(string.Create(CultureInfo.InvariantCulture, $"{what}: {median:F0} ms, median of {passes} passes, the first {cold:F0} ms{wanted}; {processor:F0} ms of processor time"));
        return median <= most;
    }
}
