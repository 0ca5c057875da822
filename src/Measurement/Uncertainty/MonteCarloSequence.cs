namespace Calx.Measurement.Uncertainty;

/// <summary>What one sequence of the adaptive procedure gives (JCGM 101:2008, 7.9.4 c and d).</summary>
internal readonly record struct MonteCarloSequence(double Mean, double StandardDeviation, double Low, double High)
{
    /// <summary>
    /// Twice the standard deviation of the average of each figure over the sequences (7.9.4 f and i), the largest of the
    /// four.
    /// </summary>
    public static double LargestDoubt(IReadOnlyList<MonteCarloSequence> sequences)
    {
        ReadOnlySpan<Func<MonteCarloSequence, double>> figures =
        [
            sequence => sequence.Mean,
            sequence => sequence.StandardDeviation,
            sequence => sequence.Low,
            sequence => sequence.High,
        ];
        double largest = 0;
        foreach (Func<MonteCarloSequence, double> figure in figures)
        {
            MonteCarloMoments moments = default;
            foreach (MonteCarloSequence sequence in sequences)
            {
                moments = moments.With(new MonteCarloMoments(1, figure(sequence), 0));
            }

            largest = Math.Max(largest, 2 * moments.StandardDeviation / Math.Sqrt(sequences.Count));
        }

        return largest;
    }
}
