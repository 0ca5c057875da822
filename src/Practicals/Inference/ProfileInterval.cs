namespace Calx.Practicals.Inference;

/// <summary>
/// The coverage interval of a quantity computed from normally distributed readings, without taking the formula to be
/// straight: the least and the largest value that the quantity takes over all readings no further than k standard
/// deviations (Mahalanobis) from those observed.
/// </summary>
/// <remarks>
/// For a straight-line formula this is value ± k·u. For a ratio of two differences it is Fieller's interval (E. C.
/// Fieller, J. R. Stat. Soc. B 16 (1954) 175), which keeps its coverage where first-order intervals lose it: a small
/// sample on a coarse balance. See docs/methods/intervals.md.
/// </remarks>
internal static class ProfileInterval
{
    private const int MostSteps = 60;
    private const double Settled = 1e-11;

    /// <summary>One end of the interval.</summary>
    /// <param name="program">The quantity as a function of its variables.</param>
    /// <param name="centre">The variables as observed.</param>
    /// <param name="covariance">Their covariance, row by row; may be singular.</param>
    /// <param name="factor">k with its sign: negative for the lower end, positive for the upper.</param>
    /// <returns>The end, or null where the quantity has no bound there: the divisor may be zero within k standard
    /// deviations, so these readings cannot bound the quantity.</returns>
    public static double? End(QuantityProgram program, ReadOnlySpan<double> centre, ReadOnlySpan<double> covariance, double factor)
    {
        int n = centre.Length;
        Span<double> point = stackalloc double[n];
        Span<double> gradient = stackalloc double[n];
        Span<double> step = stackalloc double[n];
        centre.CopyTo(point);
        if (program.MayDivideByZero(centre, covariance, Math.Abs(factor)))
        {
            return null;
        }

        double value = program.Evaluate(point, gradient);
        double first = value;
        for (int iteration = 0; iteration < MostSteps; iteration++)
        {
            double variance = QuadraticForm.Of(covariance, gradient, step);
            if (!(variance > 0) || !double.IsFinite(variance))
            {
                return variance == 0 && double.IsFinite(value) ? value : null;
            }

            double scale = factor / Math.Sqrt(variance);
            for (int i = 0; i < n; i++)
            {
                point[i] = centre[i] + scale * step[i];
            }

            double next = program.Evaluate(point, gradient);
            if (!double.IsFinite(next))
            {
                return null;
            }

            if (Math.Abs(next - value) <= Settled * Math.Max(Math.Abs(next), Math.Abs(first)))
            {
                return next;
            }

            value = next;
        }

        return null;
    }
}
