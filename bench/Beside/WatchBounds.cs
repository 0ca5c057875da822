using System.Diagnostics;
using System.Globalization;
using Calx.Bench.Benchmarks;

namespace Calx.Bench.Beside;

/// <summary>A running lesson against what a page can wait for: no general library does the same.</summary>
internal static class WatchBounds
{
    private const int Repeats = 20;

    public static bool Run(SideBySide side)
    {
        var watch = new WatchBenchmark();
        return Median(side.Passes, () => watch.Forecast(), "forecast, 12 groups, 400 lessons", 100)
            & Median(side.Passes, () => watch.WhereGroupsStand(), "where 12 groups stand", 5)
            & Median(side.Passes, () => watch.Advice(), "advice for a group", 60)
            & Median(side.Passes, () => watch.Query(), "whether a reading is asked about", 5);
    }

    private static bool Median(int passes, Action ask, string what, double most)
    {
        // Warm means compiled for good, which takes the runtime a few runs.
        for (int i = 0; i < Repeats; i++)
        {
            ask();
        }

        double[] times = new double[passes];
        for (int i = 0; i < passes; i++)
        {
            var clock = Stopwatch.StartNew();
            for (int k = 0; k < Repeats; k++)
            {
                ask();
            }

            times[i] = clock.Elapsed.TotalMilliseconds / Repeats;
        }

        Array.Sort(times);
        double median = times[passes / 2];
        Console.WriteLine(string.Create(CultureInfo.InvariantCulture, $"{what}: {median:F2} ms, median of {passes} passes (wanted: {most:F0})"));
        return median <= most;
    }
}
