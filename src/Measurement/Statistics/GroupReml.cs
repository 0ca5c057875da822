namespace Calx.Measurement.Statistics;

/// <summary>
/// The restricted likelihood of one-way random effects as a function of the one ratio λ = σ_L²/σ_r²: the mean and σ_r²
/// that go with each λ have closed forms. With w = n/(1 + λn), μ = Σwm/Σw and R = SS_within + Σw(m-μ)² it is
/// -½((N-1) ln R + Σ ln(1 + λn) + ln Σw).
/// </summary>
internal sealed class GroupReml(GroupTotals totals)
{
    private int Degrees => totals.ValueCount - 1;

    public GroupSpread Fit() => totals.WithinSquares > 0 ? Interior() : WithoutWithinSpread();

    private GroupSpread Interior()
    {
        double ratio = Ratio();
        Weighing at = At(ratio);
        double within = at.Residual / Degrees;
        return new GroupSpread(
            totals.Centre + at.Mean,
            Math.Sqrt(within / at.Weight),
            Math.Sqrt(within),
            BetweenSpread.OfVariance(ratio * within),
            totals);
    }

    // All results of each group are equal: the ratio has no bound, and the group means carry all there is.
    private GroupSpread WithoutWithinSpread()
    {
        Moments means = Moments.Of(totals.Offsets);
        double variance = means.SumOfSquares / (totals.GroupCount - 1);
        return new GroupSpread(
            totals.Centre + means.Mean,
            Math.Sqrt(variance / totals.GroupCount),
            0,
            BetweenSpread.OfVariance(variance),
            totals);
    }

    private double Ratio()
    {
        double range = totals.Offsets.Max() - totals.Offsets.Min();
        // From here on every term of the slope is negative: no peak can lie beyond.
        double upper = Degrees * range * range / totals.WithinSquares;
        return upper <= 0 ? 0 : Ascent.From(ratio => At(ratio).Slope, Height, Math.Min(1e-8, upper), upper);
    }

    private double Height(double ratio)
    {
        Weighing at = At(ratio);
        double logarithms = (Degrees * Math.Log(at.Residual)) + Math.Log(at.Weight);
        foreach (int size in totals.Sizes)
        {
            logarithms += Math.Log(1 + (ratio * size));
        }

        return -0.5 * logarithms;
    }

    private Weighing At(double ratio)
    {
        double weight = 0;
        double weighted = 0;
        double weightSquares = 0;
        for (int i = 0; i < totals.Sizes.Length; i++)
        {
            double w = totals.Sizes[i] / (1 + (ratio * totals.Sizes[i]));
            weight += w;
            weighted += w * totals.Offsets[i];
            weightSquares += w * w;
        }

        return Squares(ratio, weight, weighted / weight, weightSquares);
    }

    private Weighing Squares(double ratio, double weight, double mean, double weightSquares)
    {
        double squares = 0;
        double gains = 0;
        for (int i = 0; i < totals.Sizes.Length; i++)
        {
            double w = totals.Sizes[i] / (1 + (ratio * totals.Sizes[i]));
            double distance = totals.Offsets[i] - mean;
            squares += w * distance * distance;
            gains += w * w * distance * distance;
        }

        double residual = totals.WithinSquares + squares;
        double slope = 0.5 * ((Degrees * gains / residual) - weight + (weightSquares / weight));
        return new Weighing(weight, mean, residual, slope);
    }

    private readonly record struct Weighing(double Weight, double Mean, double Residual, double Slope);
}
