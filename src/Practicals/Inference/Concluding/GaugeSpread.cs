using Calx.Practicals.Definition;

namespace Calx.Practicals.Inference.Concluding;

/// <summary>The part of a number's standard uncertainty that comes from readings of other quantities than mass.</summary>
internal sealed class GaugeSpread
{
    private readonly ReadingDefinition[] readings;
    private readonly string[] gauges;

    /// <summary>Looks up the instruments of a practical.</summary>
    public GaugeSpread(Practical practical)
    {
        readings = [.. practical.Readings];
        gauges = [.. readings.Select(r => r.Gauge).OfType<string>().Distinct()];
    }

    /// <summary>Whether the practical only weighs.</summary>
    public bool IsEmpty => gauges.Length == 0;

    /// <summary>Whether a balance takes a reading, by its place in the practical's list.</summary>
    public bool IsWeighed(int reading) => readings[reading].IsWeighing;

    /// <summary>The standard uncertainty from the weighings with that of the other readings added in quadrature.</summary>
    /// <param name="weighed">From the weighings.</param>
    /// <param name="factors">By how much the number moves with each reading; empty where all are weighings.</param>
    /// <param name="last">The readings.</param>
    public double With(double weighed, double[] factors, ReadOnlySpan<double> last)
    {
        if (factors.Length == 0)
        {
            return weighed;
        }

        double variance = weighed * weighed;
        foreach (string gauge in gauges)
        {
            double shifted = 0;
            double scaled = 0;
            InstrumentErrors? errors = null;
            for (int i = 0; i < readings.Length; i++)
            {
                if (readings[i].Gauge == gauge)
                {
                    errors = readings[i].Errors!;
                    variance += factors[i] * factors[i] * errors.ReadingVariance(errors.Step.Grams);
                    shifted += factors[i];
                    scaled += factors[i] * last[i];
                }
            }

            // Both half widths are rectangular: JCGM 100:2008, 4.3.7.
            variance += ((shifted * shifted * errors!.Tolerance * errors.Tolerance) + (scaled * scaled * errors.ScaleTolerance * errors.ScaleTolerance)) / 3;
        }

        return Math.Sqrt(variance);
    }
}
