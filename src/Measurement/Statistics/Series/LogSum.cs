namespace Calx.Measurement.Statistics.Series;

/// <summary>Sums of numbers of which only the logarithms can be written down.</summary>
internal static class LogSum
{
    /// <summary>ln Σ e^x.</summary>
    public static double Of(ReadOnlySpan<double> logarithms)
    {
        double top = double.NegativeInfinity;
        foreach (double value in logarithms)
        {
            top = Math.Max(top, value);
        }

        double sum = 0;
        foreach (double value in logarithms)
        {
            sum += Math.Exp(value - top);
        }

        return top + Math.Log(sum);
    }
}
