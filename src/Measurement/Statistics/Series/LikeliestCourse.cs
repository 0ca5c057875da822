namespace Calx.Measurement.Statistics.Series;

/// <summary>The half-life and lag that describe a series best: the best of a lattice, then the best near it.</summary>
internal static class LikeliestCourse
{
    private const int HalfLivesTried = 120;
    private const int LagsTried = 24;
    private const int Rounds = 3;

    /// <param name="rows">The readings.</param>
    /// <param name="order">The order.</param>
    /// <param name="lagged">Whether the curve may begin after the first reading.</param>
    /// <param name="height">How well a course, the share that is over at each reading, describes them.</param>
    public static (double Lag, double LogHalfLife) Of(SeriesRows rows, KineticOrder order, bool lagged, Func<double[], double> height)
    {
        (double low, double high) = rows.LogHalfLives;
        double step = (high - low) / HalfLivesTried;
        (double lag, double place, double top) = (0, low, double.NegativeInfinity);
        for (int j = 0; j < (lagged ? LagsTried : 1); j++)
        {
            double here = rows.LongestLag * j / LagsTried;
            for (int i = 0; i <= HalfLivesTried; i++)
            {
                double found = height(rows.Gone(order, here, Math.Exp(low + (i * step))));
                if (found > top)
                {
                    (lag, place, top) = (here, low + (i * step), found);
                }
            }
        }

        for (int round = 0; round < Rounds; round++)
        {
            place = Highest(
                Math.Max(low, place - step), Math.Min(high, place + step), at => height(rows.Gone(order, lag, Math.Exp(at))));
            if (!lagged)
            {
                break;
            }

            double wide = rows.LongestLag / LagsTried / (1 << (2 * round));
            lag = Highest(
                Math.Max(0, lag - wide),
                Math.Min(rows.LongestLag, lag + wide),
                at => height(rows.Gone(order, at, Math.Exp(place))));
        }

        return (lag, place);
    }

    // Golden section: no derivative, since a straight line that ends has none at its end.
    private static double Highest(double low, double high, Func<double, double> height)
    {
        const double golden = 0.61803398874989485;
        double left = high - (golden * (high - low));
        double right = low + (golden * (high - low));
        double atLeft = height(left);
        double atRight = height(right);
        for (int i = 0; i < 30; i++)
        {
            if (atLeft >= atRight)
            {
                (high, right, atRight) = (right, left, atLeft);
                left = high - (golden * (high - low));
                atLeft = height(left);
            }
            else
            {
                (low, left, atLeft) = (left, right, atRight);
                right = low + (golden * (high - low));
                atRight = height(right);
            }
        }

        return atLeft >= atRight ? left : right;
    }
}
