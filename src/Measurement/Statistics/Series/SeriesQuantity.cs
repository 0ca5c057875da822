using Calx.Measurement.Distributions;
using Calx.Measurement.Uncertainty;

namespace Calx.Measurement.Statistics.Series;

/// <summary>A quantity that follows from a fitted curve, as a probability distribution; it need not be symmetrical.</summary>
public sealed class SeriesQuantity
{
    private readonly Component[] components;
    private readonly TailTable tails;
    private readonly Lazy<(double Low, double Middle, double High)> usual;

    internal SeriesQuantity(IEnumerable<Component> components, TailTable tails)
    {
        // Components that carry nothing would only cost time.
        this.components = [.. components.Where(part => part.Weight > 1e-9)];
        this.tails = tails;
        usual = new Lazy<(double, double, double)>(() => (Quantile(OneBelow), Quantile(0.5), Quantile(1 - OneBelow)));
    }

    // A normal distribution lies below one standard deviation under its mean with this probability.
    private static double OneBelow => StandardNormal.Cumulative(-1);

    /// <summary>The value with as much probability below it as above.</summary>
    public double Estimate => usual.Value.Middle;

    /// <summary>Half the width of the middle 68.27 %: the standard deviation where the distribution is normal.</summary>
    public double StandardUncertainty => (usual.Value.High - usual.Value.Low) / 2;

    /// <summary>The interval with equal probabilities below and above.</summary>
    /// <param name="coverage">Between 0 and 1.</param>
    /// <exception cref="ArgumentOutOfRangeException"><paramref name="coverage"/> is not between 0 and 1.</exception>
    public CoverageInterval Interval(double coverage)
    {
        Require.Probability(coverage);
        return new CoverageInterval(Quantile((1 - coverage) / 2), Quantile((1 + coverage) / 2), coverage);
    }

    /// <summary>The probability that it is at most a value.</summary>
    public double ProbabilityUpTo(double value)
    {
        double sum = 0;
        foreach (Component part in components)
        {
            sum += part.Weight * tails.Cumulative((value - part.Mean) / part.Scale);
        }

        return sum;
    }

    private double Quantile(double probability)
    {
        // The quantile lies between the components' own.
        double t = StudentT.Quantile(probability, tails.DegreesOfFreedom);
        double low = components.Min(part => part.Mean + ((t - 0.01) * part.Scale));
        double high = components.Max(part => part.Mean + ((t + 0.01) * part.Scale));
        double total = components.Sum(part => part.Weight);
        return high > low ? Root.Between(Excess, low, high) : low;

        // Nobody sees the eleventh digit of a probability, and each step of the search costs an integral a component.
        double Excess(double value)
        {
            double excess = ProbabilityUpTo(value) - (probability * total);
            return Math.Abs(excess) < 1e-11 ? 0 : excess;
        }
    }

    /// <summary>One course's share: Student's t about a mean.</summary>
    internal readonly record struct Component(double Weight, double Mean, double Scale);
}
