namespace Calx.Measurement.Distributions;

/// <summary>
/// Quantiles of one law for millions of draws, from not two hundred of them: cubics through the middle, cubics over the logarithm
/// of the tail from 1/16 out to 1/4096, and the law's own quantile beyond, so that its tails stay as they are. The quantiles are
/// worked out when first needed. Safe for several threads.
/// </summary>
public sealed class QuantileTable
{
    private const int Middle = 128;
    private const int FirstOctave = 4;
    private const int LastOctave = 12;
    private const int PerOctave = 4;

    /// <summary>One before the middle begins, for the slope there.</summary>
    private const int FirstInMiddle = (Middle >> FirstOctave) - 1;

    private static readonly double Outermost = Math.Pow(2, -LastOctave);
    private static readonly double Outer = Math.Pow(2, -FirstOctave);

    private readonly Func<double, double> quantile;
    private readonly Lazy<Points> points;

    /// <summary>Takes a law.</summary>
    /// <param name="quantile">Its quantile for any number above 0 and below 1; smooth and rising.</param>
    public QuantileTable(Func<double, double> quantile)
    {
        ArgumentNullException.ThrowIfNull(quantile);
        this.quantile = quantile;
        points = new Lazy<Points>(() => new Points(quantile));
    }

    /// <summary>The quantile, to a thousandth of the law's spread or better.</summary>
    /// <param name="p">Above 0 and below 1.</param>
    public double At(double p)
    {
        if (p >= Outer && p <= 1 - Outer)
        {
            return points.Value.InMiddle(p);
        }

        double tail = Math.Min(p, 1 - p);
        return tail < Outermost ? quantile(p) : points.Value.InTail(-Math.Log2(tail), lower: p < 0.5);
    }

    private sealed class Points
    {
        private readonly double[] middle = new double[Middle + 1];
        private readonly double[] lower = new double[((LastOctave - FirstOctave) * PerOctave) + 3];
        private readonly double[] upper = new double[((LastOctave - FirstOctave) * PerOctave) + 3];

        public Points(Func<double, double> quantile)
        {
            for (int i = FirstInMiddle; i <= Middle - FirstInMiddle; i++)
            {
                middle[i] = quantile((double)i / Middle);
            }

            // One more on either side of the tail, for the slopes at its ends.
            for (int i = 0; i < lower.Length; i++)
            {
                double tail = Math.Pow(2, -(FirstOctave + ((double)(i - 1) / PerOctave)));
                lower[i] = quantile(tail);
                upper[i] = quantile(1 - tail);
            }
        }

        public double InMiddle(double p) => Cubic(middle, p * Middle);

        public double InTail(double octaves, bool lower) => Cubic(lower ? this.lower : upper, ((octaves - FirstOctave) * PerOctave) + 1);

        /// <summary>A cubic whose slopes at both ends of an interval are those of the chords over its neighbours.</summary>
        private static double Cubic(double[] table, double place)
        {
            int i = Math.Clamp((int)place, 1, table.Length - 3);
            double t = place - i;
            double before = table[i - 1];
            double low = table[i];
            double high = table[i + 1];
            double after = table[i + 2];
            double bend = (2 * before) - (5 * low) + (4 * high) - after;
            double twist = (3 * (low - high)) + after - before;
            return low + (0.5 * t * (high - before + (t * (bend + (t * twist)))));
        }
    }
}
