namespace Calx.Measurement.Statistics;

/// <summary>What a pooled result tells of its inputs.</summary>
internal sealed record PooledInputs(double Within, int Count, double Q);

/// <summary>
/// The restricted likelihood of the variance between, τ², for values y with known variances v:
/// -½(Σ ln(v+τ²) + ln Σw + Σ w(y-μ)²) with w = 1/(v+τ²) and μ = Σwy/Σw.
/// </summary>
internal sealed class KnownUncertainties
{
    private readonly double centre;
    private readonly double[] offsets;
    private readonly double[] variances;

    public KnownUncertainties(ReadOnlySpan<double> values, ReadOnlySpan<double> standardUncertainties)
    {
        // About the median, so that the digits all values share do not eat those in which they differ.
        centre = Summary.Median(values);
        offsets = new double[values.Length];
        variances = new double[values.Length];
        for (int i = 0; i < values.Length; i++)
        {
            offsets[i] = values[i] - centre;
            variances[i] = standardUncertainties[i] * standardUncertainties[i];
        }
    }

    public PooledResult Pool() => Pool(BetweenVariance());

    /// <summary>Pools with τ half-normal, of this scale or of what the values show where that is more.</summary>
    public PooledResult PoolExpecting(double expected)
    {
        double between = BetweenVariance();
        SpreadPosterior.Mixture mixture = SpreadPosterior.Of(offsets, variances, Math.Max(expected, Math.Sqrt(between)));
        return Pool(between) with
        {
            Value = centre + mixture.Mean,
            StandardUncertainty = mixture.StandardUncertainty,
            DegreesOfFreedom = mixture.DegreesOfFreedom,
        };
    }

    private PooledResult Pool(double between)
    {
        int count = offsets.Length;
        Weighing weighing = At(between);
        double scale = count == 1 ? 1 : Math.Max(1, weighing.Squares / (count - 1));
        BetweenSpread spread = count == 1 ? new BetweenSpread.OneGroup() : BetweenSpread.OfVariance(between);
        var inputs = new PooledInputs(Math.Sqrt(variances.Average()), count, At(0).Squares);
        double[] shares = Array.ConvertAll(variances, variance => 1 / (variance + between) / weighing.Weight);
        return new PooledResult(centre + weighing.Mean, Math.Sqrt(scale / weighing.Weight), spread, inputs, shares);
    }

    private double BetweenVariance()
    {
        double range = offsets.Max() - offsets.Min();
        double least = variances.Min();
        // From τ² + v ≥ range² on, every term of the slope is negative: no peak can lie beyond.
        double upper = (range * range) - least;
        return upper <= 0 ? 0 : Ascent.From(Slope, Height, Math.Min(least, upper) * 1e-6, upper);
    }

    private double Slope(double between) => At(between).Slope;

    private double Height(double between)
    {
        Weighing weighing = At(between);
        double logarithms = Math.Log(weighing.Weight);
        foreach (double variance in variances)
        {
            logarithms += Math.Log(variance + between);
        }

        return -0.5 * (logarithms + weighing.Squares);
    }

    private Weighing At(double between)
    {
        double weight = 0;
        double weighted = 0;
        double weightSquares = 0;
        for (int i = 0; i < offsets.Length; i++)
        {
            double w = 1 / (variances[i] + between);
            weight += w;
            weighted += w * offsets[i];
            weightSquares += w * w;
        }

        return Weigh(between, weight, weighted / weight, weightSquares);
    }

    private Weighing Weigh(double between, double weight, double mean, double weightSquares)
    {
        double squares = 0;
        double gains = 0;
        for (int i = 0; i < offsets.Length; i++)
        {
            double w = 1 / (variances[i] + between);
            double distance = offsets[i] - mean;
            squares += w * distance * distance;
            gains += w * w * distance * distance;
        }

        return new Weighing(weight, mean, squares, 0.5 * (gains - weight + (weightSquares / weight)));
    }

    private readonly record struct Weighing(double Weight, double Mean, double Squares, double Slope);
}
