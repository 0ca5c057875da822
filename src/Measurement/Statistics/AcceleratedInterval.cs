using Calx.Measurement.Distributions;
using Calx.Measurement.Uncertainty;

namespace Calx.Measurement.Statistics;

/// <summary>
/// Efron's BCa end points: the normal quantile z of each end is moved to z₀ + (z₀ + z)/(1 - a(z₀ + z)), where z₀ says how far
/// the replicates' median lies from the estimate and a how the spread grows with the value.
/// </summary>
internal sealed class AcceleratedInterval(double estimate, double[] ascending, IReadOnlyList<double> leaveOneOut)
{
    public BootstrapResult For(double coverage)
    {
        double below = ShareBelow();
        if (ascending[0] == ascending[^1])
        {
            return new BootstrapResult.NotFound("every resample gives the same number, so no spread is seen");
        }

        if (below is 0 or 1)
        {
            return new BootstrapResult.NotFound("the estimate lies beyond all resamples");
        }

        double bias = StandardNormal.Quantile(below);
        double acceleration = Acceleration();
        double low = End(bias, acceleration, StandardNormal.Quantile((1 - coverage) / 2));
        double high = End(bias, acceleration, StandardNormal.Quantile((1 + coverage) / 2));
        return new BootstrapResult.Found(
            estimate,
            Summary.StandardDeviation(ascending),
            new CoverageInterval(low, high, coverage),
            new BootstrapCorrections(bias, acceleration, ascending.Length));
    }

    // Replicates equal to the estimate count half to each side, which matters for medians of readings.
    private double ShareBelow()
    {
        int below = ascending.Count(value => value < estimate);
        int equal = ascending.Count(value => value == estimate);
        return (below + (equal / 2.0)) / ascending.Length;
    }

    private double Acceleration()
    {
        double mean = leaveOneOut.Average();
        double squares = leaveOneOut.Sum(value => (mean - value) * (mean - value));
        double cubes = leaveOneOut.Sum(value => (mean - value) * (mean - value) * (mean - value));
        return squares > 0 ? cubes / (6 * Math.Pow(squares, 1.5)) : 0;
    }

    private double End(double bias, double acceleration, double z)
    {
        double moved = bias + z;
        double pole = 1 - (acceleration * moved);
        // Past the pole the formula turns round; the outermost replicate is then all that can be said.
        double share = pole > 0 ? StandardNormal.Cumulative(bias + (moved / pole)) : (z < 0 ? 0 : 1);
        return OrderStatistic(share);
    }

    // Between two order statistics along the normal quantile (Davison and Hinkley, Bootstrap Methods (1997), (5.8)).
    private double OrderStatistic(double share)
    {
        int count = ascending.Length;
        int place = (int)((count + 1) * share);
        if (place == 0 || place >= count)
        {
            return ascending[Math.Clamp(place - 1, 0, count - 1)];
        }

        double from = StandardNormal.Quantile(place / (count + 1.0));
        double to = StandardNormal.Quantile((place + 1) / (count + 1.0));
        double part = Math.Clamp((StandardNormal.Quantile(share) - from) / (to - from), 0, 1);
        return ascending[place - 1] + (part * (ascending[place] - ascending[place - 1]));
    }
}
