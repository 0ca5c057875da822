using Calx.Measurement.Distributions;

namespace Calx.Measurement.Statistics.Series;

/// <summary>
/// Tries every stretch of readings as one that lies off by a constant, each by Student's t of that constant beside the
/// straightened curve (a studentised residual where the stretch is a single reading), times the number of stretches tried
/// (Bonferroni; Cook and Weisberg, Residuals and Influence in Regression, 1982, 2.2.2).
/// </summary>
internal sealed class DisturbanceSearch
{
    private const int LongestRun = 20;
    private const int Kinds = 3;

    // A stretch that the curve itself can take up to this share is not told from it.
    private const double TakenUp = 0.02;

    private readonly FittedCurve curve;
    private readonly SeriesRows rows;
    private readonly List<double[]> units = [];
    private readonly double[] rest;
    private readonly double restSquares;
    private readonly double leastVariance;
    private readonly int degrees;

    public DisturbanceSearch(FittedCurve curve, SeriesRows rows)
    {
        this.curve = curve;
        this.rows = rows;
        foreach (double[] column in Columns())
        {
            Add(curve.Whitened(column));
        }

        rest = curve.Whitened([.. curve.Residuals]);
        units.ForEach(unit => TakeOut(unit, rest));
        restSquares = rest.Sum(value => value * value);
        degrees = rows.Count - units.Count;
        // Whitened readings have variance 1 where the noise was judged right; rounding is never less than its share of that.
        leastVariance = rows.Resolution * rows.Resolution / 12 / Math.Max(curve.WhiteNoise * curve.WhiteNoise, 1e-300);
    }

    /// <summary>The least likely stretch, or null where chance explains it.</summary>
    public Disturbance? Plainest()
    {
        Stretch best = default;
        int longest = Math.Min(LongestRun, rows.Count / 5);
        int runs = Math.Max(1, rows.Count * (longest - 1));
        foreach (Stretch stretch in curve.NoiseIsIndependent ? Summed(longest) : Filtered(longest))
        {
            int count = stretch.First == stretch.Last ? rows.Count : stretch.Last == rows.Count - 1 ? rows.Count : runs;
            Stretch counted = stretch with { Score = stretch.Gain > 0 ? Score(stretch.Gain) - Math.Log(count) : double.NegativeInfinity };
            best = best.Gain == 0 || counted.Score > best.Score ? counted with { Count = count } : best;
        }

        double probability = best.Gain > 0 ? Math.Min(1, Kinds * best.Count * Probability(best.Gain)) : 1;
        return probability < Disturbances.Significance ? Named(best, probability) : null;
    }

    private Disturbance Named(Stretch best, double probability)
    {
        int first = rows.Places[best.First];
        int last = rows.Places[best.Last];
        return best.First == best.Last ? new Disturbance.Spike(first, best.Size, probability)
            : best.Last == rows.Count - 1 ? new Disturbance.Jump(first, last, best.Size, probability)
            : new Disturbance.Run(first, last, best.Size, probability);
    }

    // Stretches that are looked at: each reading, runs inside the series, and all from one reading on but the first two.
    private IEnumerable<(int First, int Last)> Stretches(int longest)
    {
        for (int first = 0; first < rows.Count; first++)
        {
            yield return (first, first);
            for (int last = first + 1; first > 0 && last < Math.Min(first + longest, rows.Count - 1); last++)
            {
                yield return (first, last);
            }

            if (first >= 2 && first < rows.Count - 1)
            {
                yield return (first, rows.Count - 1);
            }
        }
    }

    // Where readings are independent every product with a stretch is a difference of two sums.
    private IEnumerable<Stretch> Summed(int longest)
    {
        double white = 1 / curve.WhiteNoise;
        double[] sums = Sums(rest);
        double[][] unitSums = [.. units.Select(Sums)];
        foreach ((int first, int last) in Stretches(longest))
        {
            double along = (sums[last + 1] - sums[first]) * white;
            double whole = (last - first + 1) * white * white;
            double left = whole;
            foreach (double[] unit in unitSums)
            {
                double share = (unit[last + 1] - unit[first]) * white;
                left -= share * share;
            }

            yield return Weighed(first, last, along, whole, left);
        }
    }

    private IEnumerable<Stretch> Filtered(int longest)
    {
        var column = new double[rows.Count];
        foreach ((int first, int last) in Stretches(longest))
        {
            Array.Clear(column);
            Array.Fill(column, 1, first, last - first + 1);
            double[] white = curve.Whitened(column);
            double whole = white.Sum(value => value * value);
            double along = 0;
            for (int i = first; i < white.Length; i++)
            {
                along += white[i] * rest[i];
            }

            double left = whole;
            foreach (double[] unit in units)
            {
                double share = 0;
                for (int i = first; i < white.Length; i++)
                {
                    share += white[i] * unit[i];
                }

                left -= share * share;
            }

            yield return Weighed(first, last, along, whole, left);
        }
    }

    private static Stretch Weighed(int first, int last, double along, double whole, double left) =>
        left > TakenUp * whole
            ? new Stretch(first, last, along / left, along * along / left, 0, 0)
            : new Stretch(first, last, 0, 0, 0, 0);

    private double Score(double gain) => 0.5 * degrees * Math.Log(restSquares / Math.Max(restSquares - gain, 1e-12 * restSquares));

    private double Probability(double gain)
    {
        double variance = Math.Max((restSquares - gain) / (degrees - 1), leastVariance);
        return 2 * StudentT.UpperTail(Math.Sqrt(gain / variance), degrees - 1);
    }

    private IEnumerable<double[]> Columns()
    {
        CurveNode best = curve.Best;
        double[] Each(Func<double, double> of) => [.. rows.Times.Select(time => of(time - best.Lag))];
        yield return Each(_ => 1);
        yield return Each(elapsed => CurveShape.Gone(curve.Order, elapsed, best.HalfLife));
        yield return Each(elapsed => CurveShape.ByLogHalfLife(curve.Order, elapsed, best.HalfLife));
        if (curve.Lag is not null)
        {
            yield return Each(elapsed => elapsed > 0 ? CurveShape.Speed(curve.Order, elapsed, best.HalfLife) : 0);
        }

        if (curve.Settings.DriftPerTime > 0)
        {
            yield return [.. rows.Times];
        }

        foreach (double[] jump in rows.Jumps)
        {
            yield return jump;
        }
    }

    private void Add(double[] column)
    {
        double before = Math.Sqrt(column.Sum(value => value * value));
        units.ForEach(unit => TakeOut(unit, column));
        double length = Math.Sqrt(column.Sum(value => value * value));
        if (length > 1e-9 * before)
        {
            units.Add([.. column.Select(value => value / length)]);
        }
    }

    private static void TakeOut(double[] unit, double[] from)
    {
        double share = 0;
        for (int i = 0; i < from.Length; i++)
        {
            share += unit[i] * from[i];
        }

        for (int i = 0; i < from.Length; i++)
        {
            from[i] -= share * unit[i];
        }
    }

    private static double[] Sums(double[] values)
    {
        var sums = new double[values.Length + 1];
        for (int i = 0; i < values.Length; i++)
        {
            sums[i + 1] = sums[i] + values[i];
        }

        return sums;
    }

    private readonly record struct Stretch(int First, int Last, double Size, double Gain, double Score, int Count);
}
