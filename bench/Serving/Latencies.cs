using System.Collections.Concurrent;
using System.Globalization;

namespace Calx.Bench.Serving;

/// <summary>How long answers took, in milliseconds.</summary>
internal sealed class Latencies
{
    private readonly ConcurrentBag<double> all = [];

    /// <summary>How many.</summary>
    public int Count => all.Count;

    /// <summary>Adds one.</summary>
    public void Add(TimeSpan took) => all.Add(took.TotalMilliseconds);

    /// <summary>What a share of them stayed under.</summary>
    public double Quantile(double share)
    {
        double[] sorted = [.. all.Order()];
        return sorted.Length == 0 ? 0 : sorted[Math.Min(sorted.Length - 1, (int)(share * sorted.Length))];
    }

    public override string ToString() => string.Create(
        CultureInfo.InvariantCulture, $"{Count} entries, p50 {Quantile(0.5):0.0} ms, p99 {Quantile(0.99):0.0} ms, longest {Quantile(1):0.0} ms");
}
