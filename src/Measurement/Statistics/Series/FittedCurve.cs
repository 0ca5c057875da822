namespace Calx.Measurement.Statistics.Series;

/// <summary>A curve through a series, and what follows from it.</summary>
/// <remarks>
/// Quantities hold the uncertainty of the readings, of the noise and of the drift that were assumed, and of the curve's own
/// parameters without straightening; not that the curve itself may be the wrong one.
/// </remarks>
public sealed class FittedCurve
{
    private static readonly TailTable Normal = new(double.PositiveInfinity);

    private readonly CurveNodes nodes;
    private readonly CurveNode best;
    private readonly CurveSettings settings;
    private readonly SeriesRows rows;
    private readonly double firstTime;
    private readonly double roundingVariance;
    private readonly TailTable tails;

    internal FittedCurve(TimeSeries series, KineticOrder order, CurveSettings settings, SeriesRows rows, CurveNodes nodes)
    {
        Order = order;
        this.settings = settings;
        this.rows = rows;
        this.nodes = nodes;
        firstTime = series.Times[0];
        best = nodes.Nodes.MaxBy(node => node.Part.LogHeight)!;
        WhiteNoise = Math.Sqrt(Mean(part => part.WhiteVariance));
        SharedNoise = Math.Sqrt(Mean(part => part.SharedVariance));
        SharedNoiseTime = SharedNoise > 0 ? Math.Exp(Mean(part => part.LogSharedTime)) : null;
        roundingVariance = RoundingOfALevel();
        tails = settings.Noise is SeriesNoise.Known ? Normal : new TailTable(nodes.DegreesOfFreedom);
        HalfLife = Of(node => node.HalfLife, node => node.HalfLife * node.LogCell);
        RateConstant = order switch
        {
            KineticOrder.Zeroth => null,
            _ => Of(
                node => CurveShape.FirstSpeed(order) / node.HalfLife,
                node => CurveShape.FirstSpeed(order) / node.HalfLife * node.LogCell),
        };
        Start = Linear(_ => 1, _ => 0, 0);
        Loss = Linear(_ => 0, _ => 1, roundingVariance);
        FinalValue = Linear(_ => 1, _ => -1, roundingVariance);
        RateAtStart = Linear(_ => 0, node => CurveShape.FirstSpeed(order) / node.HalfLife * Faster(node), 0);
        Lag = settings.Start == CurveStart.AtFirstReading ? null : Of(node => node.Lag, node => node.LagWidth);
        WholeLoss = settings.Start == CurveStart.GasHeldBack ? Linear(_ => 0, Whole, roundingVariance) : null;
        HeldBack = settings.Start == CurveStart.GasHeldBack ? Of(Held, HeldCell) : null;
        Residuals = WithoutJumps([.. rows.Values.Select((value, i) => value - Relative(rows.Times[i]))]);
    }

    /// <summary>The order.</summary>
    public KineticOrder Order { get; }

    /// <summary>The assumptions, with the disturbances that are allowed for.</summary>
    public CurveSettings Settings => settings;

    /// <summary>The time in which half of the change goes by, from where the curve begins, in the unit of the times.</summary>
    public SeriesQuantity HalfLife { get; }

    /// <summary>First order: k = ln 2 / T, in 1 over the unit of the times. Second: k' = 1/T of the relative amount left. Null
    /// for the zeroth, whose rate is <see cref="RateAtStart"/>.</summary>
    public SeriesQuantity? RateConstant { get; }

    /// <summary>What the first reading would be without its scatter.</summary>
    public SeriesQuantity Start { get; }

    /// <summary>By how much the readings fall in all, up to where they end to fall; negative where they rise.</summary>
    public SeriesQuantity Loss { get; }

    /// <summary>What the readings come to in the end.</summary>
    public SeriesQuantity FinalValue { get; }

    /// <summary>
    /// The rate of loss where the change begins: at the end of the delay, or, with gas held back, the rate at which it is made
    /// at the first reading. In the unit of the readings over that of the times; negative where they rise.
    /// </summary>
    public SeriesQuantity RateAtStart { get; }

    /// <summary>The time from the first reading to where the curve begins; null where none was asked for.</summary>
    public SeriesQuantity? Lag { get; }

    /// <summary>With gas held back: the loss and what stayed in the vessel; null elsewhere.</summary>
    public SeriesQuantity? WholeLoss { get; }

    /// <summary>With gas held back: what stayed in the vessel; null elsewhere.</summary>
    public SeriesQuantity? HeldBack { get; }

    /// <summary>Standard deviation of a reading by itself, rounding included.</summary>
    public double WhiteNoise { get; }

    /// <summary>Standard deviation of what readings near in time share; 0 where that was not assumed.</summary>
    public double SharedNoise { get; }

    /// <summary>The time in which that correlation falls to 1/e; null where there is none.</summary>
    public double? SharedNoiseTime { get; }

    /// <summary>Reading less the likeliest curve, for each reading that is not left out.</summary>
    public IReadOnlyList<double> Residuals { get; }

    /// <summary>The place in the series of each of <see cref="Residuals"/>.</summary>
    public IReadOnlyList<int> Places => rows.Places;

    internal CurveNodes Nodes => nodes;

    internal CurveNode Best => best;

    /// <summary>
    /// By how many standard deviations neighbouring residuals agree in sign and size more than chance makes them, once the
    /// correlation that was assumed is taken out: above about 4 the curve, or the assumption about the noise, does not hold.
    /// Residuals below half a step of the display only show its rounding, and count as 0.
    /// </summary>
    public double Wandering
    {
        get
        {
            if (WhiteNoise < rows.Resolution / 2)
            {
                return 0;
            }

            double[] left = Whitened([.. Residuals]);
            double squares = left.Sum(value => value * value);
            double neighbours = left.Skip(1).Zip(left, (after, before) => after * before).Sum();
            return squares > 0 ? neighbours / squares * Math.Sqrt(left.Length) : 0;
        }
    }

    /// <summary>A column over the readings' rows, filtered by the noise that was found.</summary>
    internal double[] Whitened(double[] column)
    {
        var into = new double[column.Length];
        NoiseFilter.Apply(column, into);
        return into;
    }

    internal bool NoiseIsIndependent => SharedNoise == 0 && best.Part.WalkPerTime == 0;

    private NoiseFilter NoiseFilter => new(rows.Times, new NoiseNode(
        WhiteNoise * WhiteNoise, SharedNoise * SharedNoise, SharedNoiseTime ?? 1, Mean(part => part.WalkPerTime), 0, true));

    /// <summary>The likeliest curve at a time, jumps left out.</summary>
    /// <param name="time">As the readings' times are counted.</param>
    public double At(double time) => rows.Origin + Relative(time - firstTime);

    private double Relative(double elapsed) =>
        best.Part.Start - (best.Part.Loss * CurveShape.Gone(Order, elapsed - best.Lag, best.HalfLife));

    private double[] WithoutJumps(double[] residuals)
    {
        if (rows.Jumps.Length == 0 || LinearLeastSquares.Fit(rows.Jumps, residuals, false) is not LinearFitResult.Fitted { Fit: var fit })
        {
            return residuals;
        }

        return [.. residuals.Select((left, i) => left - rows.Jumps.Select((jump, k) => jump[i] * fit.Coefficients[k]).Sum())];
    }

    private double Whole(CurveNode node) => CurveShape.WholeBeforeLag(Order, node.Lag, node.HalfLife);

    private double Held(CurveNode node) => (Whole(node) - 1) * node.Part.Loss;

    // What is held back hangs on the lag, which its nodes cut into stretches as wide as what is to be told.
    private double HeldCell(CurveNode node)
    {
        double early = Math.Max(0, node.Lag - (node.LagWidth / 2));
        double change = CurveShape.WholeBeforeLag(Order, node.Lag + (node.LagWidth / 2), node.HalfLife)
            - CurveShape.WholeBeforeLag(Order, early, node.HalfLife);
        return double.IsFinite(change) ? Math.Abs(change * node.Part.Loss) : 0;
    }

    private double Faster(CurveNode node) => settings.Start == CurveStart.GasHeldBack
        ? CurveShape.FasterBeforeLag(Order, Whole(node))
        : 1;

    private double Mean(Func<CoursePart, double> of) => nodes.Nodes.Sum(node => node.Weight * of(node.Part));

    // Where noise is far smaller than the step, all readings of a level are rounded alike, and no number of them helps: what
    // is left of a uniform error after the noise has blurred it (the first harmonic of the saw tooth of rounding).
    private double RoundingOfALevel()
    {
        double step = rows.Resolution;
        double noise = Math.Max(0, (WhiteNoise * WhiteNoise) - (step * step / 12));
        return step * step / 12 * Math.Exp(-4 * Math.PI * Math.PI * noise / (step * step));
    }

    private SeriesQuantity Of(Func<CurveNode, double> value, Func<CurveNode, double> cell) => new(
        nodes.Nodes.Select(node => new SeriesQuantity.Component(
            node.Weight, value(node), Math.Max(cell(node) / Math.Sqrt(12), Math.Max(1e-12 * Math.Abs(value(node)), double.Epsilon * 1e30))))
            .Where(part => double.IsFinite(part.Mean)),
        Normal);

    // a · start + b · loss at each node; neighbours' means lie apart, and each stands for the stretch up to half-way to them.
    private SeriesQuantity Linear(Func<CurveNode, double> a, Func<CurveNode, double> b, double more)
    {
        IReadOnlyList<CurveNode> all = nodes.Nodes;
        var parts = new SeriesQuantity.Component[all.Count];
        double origin = a(best) * rows.Origin;
        double Value(int i) => (a(all[i]) * all[i].Part.Start) + (b(all[i]) * all[i].Part.Loss);
        for (int i = 0; i < parts.Length; i++)
        {
            CoursePart part = all[i].Part;
            (double x, double y) = (a(all[i]), b(all[i]));
            double variance = (x * x * part.StartVariance) + (y * y * part.LossVariance) + (2 * x * y * part.Covariance) + more;
            int before = i > 0 && all[i - 1].Lag == all[i].Lag ? i - 1 : i;
            int after = i + 1 < parts.Length && all[i + 1].Lag == all[i].Lag ? i + 1 : i;
            double cell = after > before ? (Value(after) - Value(before)) / (after - before) : 0;
            double scale = Math.Sqrt(Math.Max(0, variance) + (cell * cell / 12));
            // Nothing is held back without a lag: that component is a point, and no width would make it no number.
            parts[i] = new SeriesQuantity.Component(
                all[i].Weight, origin + Value(i), Math.Max(scale, Math.Max(1e-12 * Math.Abs(Value(i)), 1e-9 * rows.Resolution)));
        }

        return new SeriesQuantity(parts.Where(part => double.IsFinite(part.Mean)), tails);
    }
}
