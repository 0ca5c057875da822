namespace Calx.Measurement.Statistics.Nonlinear;

/// <summary>Readings, the curve they are to follow, and where the search for its parameters begins.</summary>
public sealed class NonlinearProblem
{
    private readonly double[] readings;
    private readonly double[] start;
    private readonly double[] uncertainties;
    private readonly double[] lower;
    private readonly double[] upper;

    /// <summary>Readings that all scatter alike, and parameters without bounds.</summary>
    /// <param name="model">The curve.</param>
    /// <param name="readings">A reading for each point of the curve.</param>
    /// <param name="start">Where the search begins, a value for each parameter.</param>
    /// <exception cref="ArgumentException">Lengths differ, or a number is not finite.</exception>
    public NonlinearProblem(INonlinearModel model, ReadOnlySpan<double> readings, ReadOnlySpan<double> start)
        : this(
            model ?? throw new ArgumentNullException(nameof(model)),
            readings.ToArray(),
            start.ToArray(),
            Repeated(1, model.Points),
            Repeated(double.NegativeInfinity, model.Parameters.Count),
            Repeated(double.PositiveInfinity, model.Parameters.Count))
    {
        Require.Finite(readings, 1);
        Require.SameLength(readings, model.Points);
        Require.Finite(start, 1);
        Require.SameLength(start, model.Parameters.Count);
    }

    private NonlinearProblem(
        INonlinearModel model, double[] readings, double[] start, double[] uncertainties, double[] lower, double[] upper)
    {
        Model = model;
        this.readings = readings;
        this.start = start;
        this.uncertainties = uncertainties;
        this.lower = lower;
        this.upper = upper;
    }

    /// <summary>The curve.</summary>
    public INonlinearModel Model { get; }

    /// <summary>The readings.</summary>
    public ReadOnlySpan<double> Readings => readings;

    /// <summary>Where the search begins.</summary>
    public ReadOnlySpan<double> Start => start;

    /// <summary>The standard uncertainty of each reading; 1 where none were given.</summary>
    public ReadOnlySpan<double> StandardUncertainties => uncertainties;

    /// <summary>The least value of each parameter; -∞ where there is none.</summary>
    public ReadOnlySpan<double> Lower => lower;

    /// <summary>The largest value of each parameter; +∞ where there is none.</summary>
    public ReadOnlySpan<double> Upper => upper;

    /// <summary>The same with readings that count as the inverse square of their standard uncertainties.</summary>
    /// <param name="standardUncertainties">One for each reading, above 0; or in one common unknown unit.</param>
    /// <exception cref="ArgumentException">Lengths differ.</exception>
    /// <exception cref="ArgumentOutOfRangeException">A number is not above 0.</exception>
    public NonlinearProblem Weighted(ReadOnlySpan<double> standardUncertainties)
    {
        Require.SameLength(standardUncertainties, readings.Length);
        Require.Positive(standardUncertainties);
        return new NonlinearProblem(Model, readings, start, standardUncertainties.ToArray(), lower, upper);
    }

    /// <summary>The same with parameters kept between bounds; a start outside is moved to the nearer one.</summary>
    /// <param name="lower">The least value of each parameter, or -∞.</param>
    /// <param name="upper">The largest value of each parameter, above the least, or +∞.</param>
    /// <exception cref="ArgumentException">Lengths differ, or a lower bound is not below its upper one.</exception>
    public NonlinearProblem Bounded(ReadOnlySpan<double> lower, ReadOnlySpan<double> upper)
    {
        Require.SameLength(lower, start.Length);
        Require.SameLength(upper, start.Length);
        double[] inside = [.. start];
        for (int k = 0; k < inside.Length; k++)
        {
            if (!(lower[k] < upper[k]))
            {
                throw new ArgumentException($"The bounds of {Model.Parameters[k]} leave nothing between them.", nameof(lower));
            }

            inside[k] = Math.Clamp(inside[k], lower[k], upper[k]);
        }

        return new NonlinearProblem(Model, readings, inside, uncertainties, lower.ToArray(), upper.ToArray());
    }

    private static double[] Repeated(double value, int count)
    {
        var all = new double[count];
        Array.Fill(all, value);
        return all;
    }
}
