using Calx.Practicals.Inference.Posterior;

namespace Calx.Bench.Benchmarks;

/// <summary>
/// The small problem of bench/peers/posterior.py (four readings, eight hypotheses, one size each) on the program's own fit:
/// vessel and magnesium in closed form with the exact rounding, the size by Gauss-Legendre nodes.
/// </summary>
internal sealed class FourReadings
{
    public static readonly double[][] Groups =
    [
        [24.51, 24.83, 25.04, 25.04], [24.51, 24.83, 24.97, 25.04], [24.51, 24.83, 24.99, 24.99],
        [24.51, 24.83, 24.93, 24.93], [24.51, 24.83, 25.10, 25.10],
    ];

    private const double Division = 0.01;
    private const double Noise = 0.005;
    private const double Oxide = 1 + (15.999 / 24.305);
    private const double Nitrogen = 2 * 14.007 / (3 * 24.305);
    private const int Hypotheses = 8;

    // Over a width of 0.04 and 0.06 g the priors are flat; beyond it nothing is left of the likelihood.
    private static readonly AmountPrior Flat = new(0, 1e4);

    private readonly (double Node, double Weight)[] nodes = GaussLegendre(40);
    private readonly PointTable table;
    private readonly RoundingRatios ratios = new();

    public FourReadings()
    {
        int points = Hypotheses * nodes.Length;
        double[] slopes = new double[points * 4];
        double[] intercepts = new double[points * 4];
        for (int h = 0; h < Hypotheses; h++)
        {
            for (int k = 0; k < nodes.Length; k++)
            {
                int at = ((h * nodes.Length) + k) * 4;
                slopes[at + 1] = 1;
                (slopes[at + 2], intercepts[at + 2], slopes[at + 3], intercepts[at + 3]) = Lines(h, nodes[k].Node);
            }
        }

        table = new PointTable(4, 1, slopes, intercepts, new double[points * 4]);
    }

    /// <summary>Natural logarithm of each hypothesis's marginal likelihood.</summary>
    public double[] LogMarginals(double[] readings)
    {
        WeighedRow[] rows = [.. readings.Select((r, i) => new WeighedRow($"r{i}", [(i, 1)], r, Division, Noise, tared: true))];
        var unknowns = new Unknowns(4, Flat with { Mean = readings[0] }, Flat with { Mean = readings[1] - readings[0] });
        var fit = new PointFit(table, unknowns, rows);
        var exact = new ExactRounding(rows, unknowns, fit, ratios);
        double[] result = new double[Hypotheses];
        for (int h = 0; h < Hypotheses; h++)
        {
            double sum = 0;
            for (int k = 0; k < nodes.Length; k++)
            {
                fit.Fit((h * nodes.Length) + k, readings);
                if (fit.LogEvidence > -200)
                {
                    sum += nodes[k].Weight * Math.Exp(fit.LogEvidence + exact.LogRatio(-1, -1));
                }
            }

            // Density to probability of four displays; the normal prior's density at its middle to the flat one's.
            result[h] = Math.Log(sum) + (4 * Math.Log(Division)) + (2 * Math.Log(1e4 * Math.Sqrt(2 * Math.PI))) - Math.Log(0.08 * 0.12);
        }

        return result;
    }

    private static (double Slope2, double Intercept2, double Slope3, double Intercept3) Lines(int hypothesis, double x)
    {
        double unburnt = 1 + ((Oxide - 1) * (1 - (0.8 * x)));
        double nitrided = 1 + ((1 - (0.6 * x)) * (Oxide - 1)) + (0.6 * x * Nitrogen);
        return hypothesis switch
        {
            0 => (Oxide, 0, Oxide, 0),
            1 => (Oxide, -0.10 * x, Oxide, -0.10 * x),
            2 => (Oxide * (1 - (0.4 * x)), 0, Oxide * (1 - (0.4 * x)), 0),
            3 => (unburnt, 0, Oxide, 0),
            4 => (unburnt, 0, unburnt, 0),
            5 => (nitrided, 0, nitrided, 0),
            6 => (Oxide, -0.08 * x, Oxide, 0),
            _ => (Oxide, 0.20 * (x - 0.5), Oxide, 0.20 * (x - 0.5)),
        };
    }

    /// <summary>Nodes and weights on 0 to 1 by Newton's method on Legendre polynomials.</summary>
    private static (double Node, double Weight)[] GaussLegendre(int n)
    {
        var result = new (double Node, double Weight)[n];
        for (int i = 0; i < n; i++)
        {
            double x = Math.Cos(Math.PI * (i + 0.75) / (n + 0.5));
            double slope = 1;
            for (int step = 0; step < 50; step++)
            {
                (double value, slope) = Legendre(n, x);
                x -= value / slope;
            }

            result[i] = ((x + 1) / 2, 1 / ((1 - (x * x)) * slope * slope));
        }

        return result;
    }

    private static (double Value, double Slope) Legendre(int n, double x)
    {
        double before = 1;
        double value = x;
        for (int k = 2; k <= n; k++)
        {
            (before, value) = (value, ((((2 * k) - 1) * x * value) - ((k - 1) * before)) / k);
        }

        return (value, n * ((x * value) - before) / ((x * x) - 1));
    }
}
