using System.Diagnostics;
using System.Globalization;
using Calx.Bench.Benchmarks;

namespace Calx.Bench.Beside;

/// <summary>A whole plan against what a teacher waits for: no general library does the same.</summary>
internal static class PlanBounds
{
    private const double MostMilliseconds = 400;
    private const double MostWithWays = 2400;

    public static bool Run(SideBySide side)
    {
        bool ok = true;
        foreach (double minutes in (double[])[60, 100])
        {
            var plan = new PlanBenchmark { Minutes = minutes };
            ok &= Median(side.Passes, () => plan.AmountsReadingsAndLesson(), $"{minutes} min: amounts, readings and lesson", MostMilliseconds);
            ok &= Median(side.Passes, () => plan.WithWays(), $"{minutes} min: the same and ways out", MostWithWays);
        }

        return ok;
    }

    private static bool Median(int passes, Action plan, string what, double most)
    {
        // Warm means compiled for good, which takes the runtime a few runs.
        for (int i = 0; i < 4; i++)
        {
            plan();
        }

        double[] times = new double[passes];
        for (int i = 0; i < passes; i++)
        {
            var watch = Stopwatch.StartNew();
            plan();
            times[i] = watch.Elapsed.TotalMilliseconds;
        }

        Array.Sort(times);
        double median = times[passes / 2];
        Console.WriteLine(string.Create(CultureInfo.InvariantCulture, $"{what}: {median:F0} ms, median of {passes} passes (wanted: {most:F0})"));
        return median <= most;
    }
}
