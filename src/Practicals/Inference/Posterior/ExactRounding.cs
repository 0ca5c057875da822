namespace Calx.Practicals.Inference.Posterior;

/// <summary>
/// The exact probability of the rounded digits over the normal law that stood for it, averaged over parts and amounts at one
/// point by Gauss-Hermite nodes. With noise of six tenths of a division and more three nodes along each axis are exact to the
/// fourth power of the residuals, in which the two laws first differ.
/// </summary>
internal sealed class ExactRounding
{
    /// <summary>Share of a weighing's scatter below which a swing is nothing: it enters by its square.</summary>
    private const double LeastSwing = 0.05;

    private readonly int unknowns;
    private readonly int first;
    private readonly PointFit fit;
    private readonly RoundingRatio?[] ratios;
    private readonly (double Node, double Weight)[] rule;
    private readonly (double[] Steps, double LogWeight)[]?[] grids;
    private readonly int[] all;
    private readonly double[]? spreads;
    private readonly double[] swings;
    private readonly double[] residuals;

    public ExactRounding(WeighedRow[] rows, Unknowns unknowns, PointFit fit, RoundingRatios tables)
    {
        this.unknowns = unknowns.Count;
        // What an instrument is off comes first among the unknowns, so that no weighing swings with it: it needs no nodes.
        first = unknowns.Instruments;
        this.fit = fit;
        ratios = [.. rows.Select(r => r is { IsReading: true, IsWeighed: true } ? tables.Of(r.DivisionInGrams, r.NoiseInGrams) : null)];
        double least = ratios.OfType<RoundingRatio>().Select(r => r.NoiseInDivisions).DefaultIfEmpty(1).Min();
        swings = new double[unknowns.Count * rows.Length];
        residuals = new double[rows.Length];
        rule = least >= 0.6 ? GaussHermite.Three : least >= 0.3 ? GaussHermite.Five : GaussHermite.Nine;
        grids = new (double[], double)[unknowns.Count + 1][];
        all = [.. Enumerable.Range(first, unknowns.Count - first)];
        spreads = Array.TrueForAll(rows, r => r.IsWeighed) ? null : [.. rows.Select(r => Math.Sqrt(r.Variance))];
    }

    /// <summary>Natural logarithm of exact over normal at the point fitted last.</summary>
    /// <param name="leftOut">A row without a reading, or -1.</param>
    /// <param name="alsoLeftOut">Another, or -1.</param>
    public double LogRatio(int leftOut, int alsoLeftOut)
    {
        int d = unknowns;
        fit.Swings(swings);
        int[] axes = Axes();
        (double[] Steps, double LogWeight)[] nodes = grids[axes.Length] ??= Grid(axes.Length, rule);
        for (int row = 0; row < ratios.Length; row++)
        {
            residuals[row] = fit.ResidualOf(row);
        }

        double sum = 0;
        foreach ((double[] steps, double logWeight) in nodes)
        {
            double log = logWeight;
            for (int row = 0; row < ratios.Length; row++)
            {
                if (ratios[row] is not RoundingRatio ratio || row == leftOut || row == alsoLeftOut)
                {
                    continue;
                }

                double residual = residuals[row];
                for (int c = 0; c < axes.Length; c++)
                {
                    residual -= swings[(row * d) + axes[c]] * steps[c];
                }

                log += ratio.LogAt(residual);
            }

            sum += Math.Exp(log);
        }

        return Math.Log(Math.Max(sum, 1e-300));
    }

    /// <summary>The axes with which some weighing swings. Where a group reads other things as well, most axes are theirs, and what no
    /// weighing feels needs no nodes.</summary>
    private int[] Axes()
    {
        return spreads is null ? all : [.. all.Where(Felt)];

        bool Felt(int axis)
        {
            for (int row = 0; row < ratios.Length; row++)
            {
                if (ratios[row] is not null && Math.Abs(swings[(row * unknowns) + axis]) > LeastSwing * spreads[row])
                {
                    return true;
                }
            }

            return false;
        }
    }

    private static (double[] Steps, double LogWeight)[] Grid(int dimensions, (double Node, double Weight)[] rule)
    {
        var grid = new List<(double[] Steps, double LogWeight)> { ([], 0) };
        for (int d = 0; d < dimensions; d++)
        {
            grid = [.. grid.SelectMany(g => rule.Select(r => ((double[])[.. g.Steps, r.Node], g.LogWeight + Math.Log(r.Weight))))];
        }

        return [.. grid];
    }
}
