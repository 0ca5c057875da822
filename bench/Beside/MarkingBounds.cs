using System.Diagnostics;
using System.Globalization;
using Calx.Bench.Benchmarks;

namespace Calx.Bench.Beside;

/// <summary>Marking against what a teacher can wait for: no general library does the same.</summary>
internal static class MarkingBounds
{
    public static bool Run(SideBySide side)
    {
        var marking = new MarkingBenchmark();
        var first = Stopwatch.StartNew();
        marking.Thirty();
        Console.WriteLine(string.Create(CultureInfo.InvariantCulture, $"30 students, the first time in a process: {first.Elapsed.TotalMilliseconds:F0} ms"));
        return Median(side.Passes, () => marking.Thirty(), "30 students", 200) & Median(side.Passes, () => marking.ThreeThousand(), "3,000 students in 100 classes", 10_000);
    }

    private static bool Median(int passes, Action mark, string what, double most)
    {
        double[] times = [.. Enumerable.Range(0, passes).Select(_ =>
        {
            var clock = Stopwatch.StartNew();
            mark();
            return clock.Elapsed.TotalMilliseconds;
        }).Order()];
        double median = times[passes / 2];
        Console.WriteLine(string.Create(CultureInfo.InvariantCulture, $"{what}: {median:F1} ms, median of {passes} passes (wanted: {most:F0})"));
        return median <= most;
    }
}
