namespace Calx.Measurement.Statistics.Series;

/// <summary>One course of the curve with its share of the whole probability.</summary>
/// <param name="Lag">Time from the first reading to where the curve begins.</param>
/// <param name="LagWidth">The stretch of lags it stands for.</param>
/// <param name="HalfLife">T.</param>
/// <param name="Weight">Its probability.</param>
/// <param name="Part">Start and loss.</param>
/// <param name="LogCell">The stretch of ln T it stands for.</param>
internal sealed record CurveNode(double Lag, double LagWidth, double HalfLife, double Weight, CoursePart Part, double LogCell);

/// <summary>
/// The probability of every course of a curve: half-life and lag by nodes, start, loss and scale in closed form at each node,
/// and the assumptions about the noise averaged over. Nothing is straightened and nothing is drawn.
/// </summary>
internal sealed class CurveNodes
{
    // An assumption whose probability is below e⁻¹⁰ of the best at the peak is left out: there are at most 200.
    private const double Unlikely = 10;

    private readonly SeriesRows rows;
    private readonly KineticOrder order;
    private readonly bool lagged;
    private readonly LinearPart[] parts;
    private ConditionalFit[] fits;
    private double[] logSharedTimes;

    private CurveNodes(SeriesRows rows, KineticOrder order, CurveSettings settings)
    {
        this.rows = rows;
        this.order = order;
        lagged = settings.Start != CurveStart.AtFirstReading;
        NoiseNode[] noise = NoiseNode.Of(settings.Noise, rows);
        double[] scales = settings.DriftPerTime > 0 ? Scales(noise) : new double[noise.Length];
        fits = [.. noise.Select((node, i) => new ConditionalFit(
            rows, node, settings.DriftPerTime > 0 ? settings.DriftPerTime / scales[i] : 0))];
        logSharedTimes = [.. noise.Select(node => Math.Log(node.SharedTime))];
        parts = new LinearPart[noise.Length];
        Nodes = Lay();
    }

    public IReadOnlyList<CurveNode> Nodes { get; }

    /// <summary>Logarithm of the probability of the readings, up to what is the same for all orders.</summary>
    public double LogEvidence { get; private set; }

    /// <summary>Of the closed form: readings less straight parts.</summary>
    public int DegreesOfFreedom => fits[0].DegreesOfFreedom;

    public static CurveNodes Of(SeriesRows rows, KineticOrder order, CurveSettings settings) => new(rows, order, settings);

    // The drift is known in the unit of the readings, the noise only up to its scale: that is taken from a first look.
    private double[] Scales(NoiseNode[] noise)
    {
        ConditionalFit[] still = [.. noise.Select(node => new ConditionalFit(rows, node, 0))];
        (double lag, double logHalfLife) = LikeliestCourse.Of(rows, order, lagged, gone => still[0].At(gone).LogHeight);
        double[] gone = rows.Gone(order, lag, Math.Exp(logHalfLife));
        return [.. still.Zip(noise, (fit, node) =>
        {
            LinearPart part = fit.At(gone);
            return node.ScaleIsKnown ? 1 : Math.Sqrt((part.WhiteVariance + part.SharedVariance) / (node.White + node.Shared));
        })];
    }

    private List<CurveNode> Lay()
    {
        (double lag, double logHalfLife) = LikeliestCourse.Of(rows, order, lagged, gone => fits[0].At(gone).LogHeight);
        Prune(rows.Gone(order, lag, Math.Exp(logHalfLife)));
        if (fits.Length > 1)
        {
            int best = Enumerable.Range(0, fits.Length).MaxBy(i => parts[i].LogHeight);
            (lag, logHalfLife) = LikeliestCourse.Of(rows, order, lagged, gone => fits[best].At(gone).LogHeight);
        }

        (double low, double high) = rows.LogHalfLives;
        double step = (high - low) / 1000;
        if (!lagged)
        {
            return Collected([(0, 1, 0, Inner(0, logHalfLife, step))]);
        }

        double near = logHalfLife;
        var outer = Quadrature.Along(lag, rows.LongestLag / 100, 0, rows.LongestLag, at =>
        {
            List<Quadrature.Node<CoursePart>> inner = Inner(at, near, step);
            Quadrature.Node<CoursePart> top = inner.MaxBy(node => node.LogWeight);
            (near, step) = (top.Place, top.Width);
            return (LogSum.Of([.. inner.Select(node => node.LogWeight)]), inner);
        });
        return Collected([.. outer.Select(node => (node.Place, node.Width, Math.Log(node.Width), node.Value))]);
    }

    private List<Quadrature.Node<CoursePart>> Inner(double lag, double near, double step)
    {
        (double low, double high) = rows.LogHalfLives;
        return Quadrature.Along(near, step, low, high, logHalfLife =>
        {
            CoursePart part = At(rows.Gone(order, lag, Math.Exp(logHalfLife)));
            return (part.LogHeight, part);
        });
    }

    private CoursePart At(double[] gone)
    {
        for (int i = 0; i < fits.Length; i++)
        {
            parts[i] = fits[i].At(gone);
        }

        return CoursePart.Of(parts.AsSpan(0, fits.Length), logSharedTimes);
    }

    private void Prune(double[] gone)
    {
        if (fits.Length == 1)
        {
            return;
        }

        double[] heights = [.. fits.Select(fit => fit.At(gone).LogHeight)];
        double least = heights.Max() - Unlikely;
        fits = [.. fits.Where((_, i) => heights[i] >= least)];
        logSharedTimes = [.. logSharedTimes.Where((_, i) => heights[i] >= least)];
        for (int i = 0; i < fits.Length; i++)
        {
            parts[i] = fits[i].At(gone);
        }
    }

    private List<CurveNode> Collected(List<(double Lag, double Width, double LogWidth, List<Quadrature.Node<CoursePart>> Inner)> outer)
    {
        LogEvidence = LogSum.Of([.. outer.SelectMany(at => at.Inner.Select(node => at.LogWidth + node.LogWeight))]);
        return [.. outer.SelectMany(at => at.Inner.Select(node => new CurveNode(
            at.Lag,
            lagged ? at.Width : 0,
            Math.Exp(node.Place),
            Math.Exp(at.LogWidth + node.LogWeight - LogEvidence),
            node.Value,
            node.Width)))];
    }
}
