namespace Calx.Measurement.Statistics;

/// <summary>Finds where a likelihood of one variance is largest, the boundary 0 included.</summary>
internal static class Ascent
{
    /// <summary>Close enough that no second peak of a likelihood of variances was seen to hide between two points.</summary>
    private const int PointsPerDecade = 4;

    /// <summary>
    /// The largest of <paramref name="height"/> on 0 to <paramref name="upper"/>, given its slope. Such a likelihood may
    /// have more than one peak when group sizes differ, so every change of the slope's sign is followed up.
    /// </summary>
    /// <param name="slope">Derivative of <paramref name="height"/>; not positive at <paramref name="upper"/>.</param>
    /// <param name="height">The log likelihood, up to a constant.</param>
    /// <param name="fine">A positive step below which nothing of interest happens.</param>
    /// <param name="upper">Where the search ends.</param>
    public static double From(Func<double, double> slope, Func<double, double> height, double fine, double upper)
    {
        List<double> peaks = Peaks(slope, fine, upper);
        return peaks.Count == 1 ? peaks[0] : peaks.MaxBy(height);
    }

    private static List<double> Peaks(Func<double, double> slope, double fine, double upper)
    {
        List<double> peaks = [];
        double left = 0;
        double slopeLeft = slope(0);
        if (slopeLeft <= 0)
        {
            peaks.Add(0);
        }

        foreach (double right in Steps(Math.Min(fine, upper), upper))
        {
            double slopeRight = slope(right);
            if (slopeLeft > 0 && slopeRight <= 0)
            {
                peaks.Add(Root.Between(slope, left, right));
            }

            left = right;
            slopeLeft = slopeRight;
        }

        // Rounding may leave a slope above 0 at the proven upper bound; then that bound is the peak to all figures.
        return peaks.Count > 0 ? peaks : [upper];
    }

    private static IEnumerable<double> Steps(double fine, double upper)
    {
        int count = 1 + (int)Math.Ceiling(PointsPerDecade * Math.Log10(upper / fine));
        double ratio = Math.Pow(upper / fine, 1.0 / count);
        for (int i = 0; i < count; i++)
        {
            yield return fine * Math.Pow(ratio, i);
        }

        yield return upper;
    }
}
