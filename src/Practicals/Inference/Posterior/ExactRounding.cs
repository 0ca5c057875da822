namespace Calx.Practicals.Inference.Posterior;

/// <summary>
/// The exact probability of the rounded digits over the normal law that stood for it, averaged over parts and amounts at one
/// point by Gauss-Hermite nodes. With noise of six tenths of a division and more three nodes along each axis are exact to the
/// fourth power of the residuals, in which the two laws first differ.
/// </summary>
internal sealed class ExactRounding
{
    private readonly int unknowns;
    private readonly PointFit fit;
    private readonly RoundingRatio?[] ratios;
    private readonly (double[] Steps, double LogWeight)[] nodes;
    private readonly double[] swings;
    private readonly double[] residuals;

    public ExactRounding(WeighedRow[] rows, int unknowns, PointFit fit, RoundingRatios tables)
    {
        this.unknowns = unknowns;
        this.fit = fit;
        ratios = [.. rows.Select(r => r.IsReading ? tables.Of(r.DivisionInGrams, r.NoiseInGrams) : null)];
        double least = ratios.OfType<RoundingRatio>().Select(r => r.NoiseInDivisions).DefaultIfEmpty(1).Min();
        swings = new double[unknowns * rows.Length];
        residuals = new double[rows.Length];
        nodes = Grid(unknowns, least >= 0.6 ? GaussHermite.Three : least >= 0.3 ? GaussHermite.Five : GaussHermite.Nine);
    }

    /// <summary>Natural logarithm of exact over normal at the point fitted last.</summary>
    /// <param name="leftOut">A row without a reading, or -1.</param>
    /// <param name="alsoLeftOut">Another, or -1.</param>
    public double LogRatio(int leftOut, int alsoLeftOut)
    {
        int d = unknowns;
        fit.Swings(swings);
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
                for (int c = 0; c < d; c++)
                {
                    residual -= swings[(row * d) + c] * steps[c];
                }

                log += ratio.LogAt(residual);
            }

            sum += Math.Exp(log);
        }

        return Math.Log(Math.Max(sum, 1e-300));
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
