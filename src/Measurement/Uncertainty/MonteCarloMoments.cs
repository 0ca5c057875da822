using System.Runtime.InteropServices;
using System.Runtime.Intrinsics;

namespace Calx.Measurement.Uncertainty;

/// <summary>Number, mean and sum of squared deviations of some draws; <c>default</c> is no draws.</summary>
internal readonly record struct MonteCarloMoments(long Count, double Mean, double SquaredDeviations)
{
    /// <summary>With divisor M − 1 (JCGM 101:2008, 7.6).</summary>
    public double StandardDeviation => Math.Sqrt(SquaredDeviations / (Count - 1));

    /// <summary>Of one block: the mean first, then the deviations from it. Four lanes on every machine, so that the
    /// order of the sums is the same on all.</summary>
    public static MonteCarloMoments Of(ReadOnlySpan<double> values)
    {
        ReadOnlySpan<Vector256<double>> vectors = MemoryMarshal.Cast<double, Vector256<double>>(values);
        ReadOnlySpan<double> rest = values[(vectors.Length * Vector256<double>.Count)..];
        Vector256<double> sums = Vector256<double>.Zero;
        foreach (Vector256<double> vector in vectors)
        {
            sums += vector;
        }

        double sum = Vector256.Sum(sums);
        foreach (double value in rest)
        {
            sum += value;
        }

        double mean = sum / values.Length;
        return new MonteCarloMoments(values.Length, mean, Deviations(vectors, rest, mean));
    }

    /// <summary>Of both together (Chan, Golub and LeVeque 1983); adding blocks in order gives the same on any number of
    /// threads.</summary>
    public MonteCarloMoments With(MonteCarloMoments other)
    {
        if (Count == 0)
        {
            return other;
        }

        long count = Count + other.Count;
        double difference = other.Mean - Mean;
        double share = (double)other.Count / count;
        double squares = SquaredDeviations + other.SquaredDeviations + (difference * difference * share * Count);
        return new MonteCarloMoments(count, Mean + (difference * share), squares);
    }

    private static double Deviations(ReadOnlySpan<Vector256<double>> vectors, ReadOnlySpan<double> rest, double mean)
    {
        Vector256<double> means = Vector256.Create(mean);
        Vector256<double> squares = Vector256<double>.Zero;
        foreach (Vector256<double> vector in vectors)
        {
            Vector256<double> deviation = vector - means;
            squares += deviation * deviation;
        }

        double sum = Vector256.Sum(squares);
        foreach (double value in rest)
        {
            sum += (value - mean) * (value - mean);
        }

        return sum;
    }
}
