using System.Diagnostics;
using System.Globalization;
using Calx.Bench.Benchmarks;

namespace Calx.Bench.Beside;

/// <summary>What past lessons teach, against what a page can wait for: no general library does the same.</summary>
internal static class LearningBounds
{
    public static bool Run(SideBySide side)
    {
        var learning = new LearningBenchmark();
        return Median(side.Passes, () => learning.TwentyLessons(), "20 lessons of 15 groups, all numbers", 2000)
            & Median(side.Passes, () => learning.FaultsOfOne(), "faults of a lesson of 15 groups", 300)
            & Median(side.Passes, () => learning.TimesOfOne(), "times of a lesson of 15 groups", 5);
    }

    private static bool Median(int passes, Action ask, string what, double most)
    {
        ask();
        double[] times = new double[passes];
        for (int i = 0; i < passes; i++)
        {
            var clock = Stopwatch.StartNew();
            ask();
            times[i] = clock.Elapsed.TotalMilliseconds;
        }

        Array.Sort(times);
        double median = times[passes / 2];
        Console.WriteLine(string.Create(CultureInfo.InvariantCulture, $"{what}: {median:F1} ms, median of {passes} passes (wanted: {most:F0})"));
        return median <= most;
    }
}
