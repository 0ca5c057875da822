using Calx.Measurement.Statistics;

namespace Calx.Practicals.Watching;

/// <summary>When something happens, in min since the lesson began.</summary>
/// <param name="Median">In half of the lessons by this minute.</param>
/// <param name="Ninth">In nine lessons of ten by this minute.</param>
public readonly record struct MinuteRange(double Median, double Ninth)
{
    internal static MinuteRange Of(double[] minutes)
    {
        double[] sorted = [.. minutes.Order()];
        return new MinuteRange(Summary.QuantileOfSorted(sorted, 0.5), Summary.QuantileOfSorted(sorted, 0.9));
    }
}
