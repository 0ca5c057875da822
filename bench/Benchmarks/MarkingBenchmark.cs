using System.Globalization;
using BenchmarkDotNet.Attributes;
using Calx.Chemistry.Elements;
using Calx.Measurement.Numbers;
using Calx.Practicals.Definition;
using Calx.Practicals.Marking;

namespace Calx.Bench.Benchmarks;

/// <summary>Marking a class, and a school, of whom a third has something wrong in the last step and a third before it.</summary>
public class MarkingBenchmark
{
    private readonly Marker marker = new(
        BuiltInPracticals.Find("magnesium-oxide")!, MarkingPolicy.Usual, [.. new[] { "school-1dp", "school-0dp" }.Select(AtomicWeightSets.Named)]);

    private readonly StudentWork[] class30 = [.. Enumerable.Range(0, 30).Select(Work)];
    private readonly StudentWork[] school3000 = [.. Enumerable.Range(0, 3000).Select(Work)];

    [Benchmark]
    public int Thirty() => marker.Mark(class30).Works.Sum(w => w.Total);

    /// <summary>In a hundred classes: another student's readings are looked for in the own class.</summary>
    [Benchmark]
    public int ThreeThousand() => school3000.Chunk(30).Sum(one => marker.Mark(one).Works.Sum(w => w.Total));

    private static StudentWork Work(int number)
    {
        decimal empty = 25m + (0.07m * (number % 100)), magnesium = 0.18m + (0.01m * (number % 9)), oxygen = 0.10m + (0.01m * (number % 7));
        double n = (double)magnesium / 24.3, o = (double)oxygen / (number % 3 == 1 ? 32 : 16), ratio = number % 3 == 2 ? o / n : n / o;
        string Figures(double value) => value.ToString("G3", CultureInfo.InvariantCulture);
        return new StudentWork(
            string.Create(CultureInfo.InvariantCulture, $"student {number}"),
            new Dictionary<string, IReadOnlyList<WrittenNumber>>
            {
                ["empty"] = [new(empty)], ["before"] = [new(empty + magnesium)], ["after"] = [new(empty + magnesium + oxygen)],
            },
            new Dictionary<string, string>
            {
                ["massMagnesium"] = magnesium.ToString(CultureInfo.InvariantCulture), ["massOxygen"] = oxygen.ToString(CultureInfo.InvariantCulture),
                ["molesMagnesium"] = Figures(n), ["molesOxygen"] = Figures(o), ["ratio"] = Figures(ratio),
            });
    }
}
