namespace Calx.Measurement.Statistics.Nonlinear;

/// <summary>
/// Steps down the sum of squares, each to the least of the straightened curve within an ellipsoid that grows where the
/// straightening is trustworthy and shrinks where it is not (Moré, Lecture Notes in Mathematics 630 (1978) 105), then plain
/// Gauss-Newton steps to the last digits, where sums of squares no longer tell two points apart.
/// </summary>
internal sealed class TrustRegion
{
    private const int MostSteps = 5000;
    private const int MostLastSteps = 200;

    // The first ellipsoid reaches as far as this many times the start, each parameter by its own measure.
    private const double FirstReach = 1;

    // Below this share of the sum of squares a predicted fall is of the size of rounding.
    private const double Rounding = 1e-14;
    private const double LeastReach = 1e-13;

    private readonly NonlinearProblem problem;
    private readonly double[] scale;
    private FitPoint point;
    private double reach;

    private TrustRegion(NonlinearProblem problem, FitPoint start)
    {
        this.problem = problem;
        point = start;
        scale = new double[start.Parameters.Length];
    }

    /// <summary>How many steps were tried.</summary>
    public int Steps { get; private set; }

    /// <summary>Why the search ended without a least; null where it found one.</summary>
    public string? Failure { get; private set; }

    public FitPoint Point => point;

    /// <summary>Which parameters are not held at a bound.</summary>
    public List<int> Free { get; private set; } = [];

    /// <summary>Searches from the start; null where the curve has no value there.</summary>
    public static TrustRegion? From(NonlinearProblem problem)
    {
        if (FitPoint.At(problem, [.. problem.Start]) is not { } start)
        {
            return null;
        }

        var search = new TrustRegion(problem, start);
        search.Descend();
        if (search.Failure is null)
        {
            search.Settle();
        }

        return search;
    }

    private void Descend()
    {
        while (Steps < MostSteps)
        {
            TriangularFactor factor = Factorise();
            if (Free.Count == 0 || point.SumOfSquares == 0)
            {
                return;
            }

            var singular = new SingularFactor(factor.Upper, Scales());
            if (!Advance(factor, singular))
            {
                return;
            }
        }

        Failure = $"the sum of squares was still falling after {MostSteps} steps";
    }

    // Tries smaller and smaller steps until one is taken; false where none is left to take.
    private bool Advance(TriangularFactor factor, SingularFactor singular)
    {
        while (Steps++ < MostSteps)
        {
            double[] step = new TrustStep(singular, factor.Reach, Scales()).Within(reach, out bool whole);
            double[] trial = Moved(step, out double[] taken);
            double length = Length(taken);
            double predicted = 1 - (factor.SquaresAfter(taken) / point.SumOfSquares);
            if (predicted <= Rounding || length <= LeastReach * Length(point.Parameters, Free))
            {
                return false;
            }

            FitPoint? next = FitPoint.At(problem, trial);
            double ratio = next is null ? -1 : (1 - (next.SumOfSquares / point.SumOfSquares)) / predicted;
            reach = ratio < 0.25 ? Math.Min(reach, length) / 4
                : ratio > 0.75 || whole ? Math.Max(reach, 2 * length)
                : reach;
            if (ratio > 1e-4)
            {
                point = next!;
                return true;
            }
        }

        return true;
    }

    // Gauss-Newton steps as long as each is shorter than the one before: the end of the digits of a double.
    private void Settle()
    {
        double before = double.PositiveInfinity;
        for (int i = 0; i < MostLastSteps; i++)
        {
            TriangularFactor factor = Factorise();
            if (Free.Count == 0)
            {
                return;
            }

            var singular = new SingularFactor(factor.Upper, Scales());
            double[] whole = new TrustStep(singular, factor.Reach, Scales()).Within(double.PositiveInfinity, out _);
            double[] trial = Moved(whole, out double[] taken);
            double length = Length(taken);
            FitPoint? next = length < 0.95 * before ? FitPoint.At(problem, trial) : null;
            if (next is null || next.SumOfSquares > point.SumOfSquares * (1 + 1e-9))
            {
                return;
            }

            before = length;
            point = next;
        }
    }

    private TriangularFactor Factorise()
    {
        Free = [.. Enumerable.Range(0, scale.Length).Where(k => !IsHeld(k))];
        var factor = new TriangularFactor(point, Free);
        bool first = reach == 0;
        for (int j = 0; j < Free.Count; j++)
        {
            scale[Free[j]] = Math.Max(scale[Free[j]], factor.ColumnNorms[j]);
        }

        if (first)
        {
            double start = Length(point.Parameters, Free);
            reach = start > 0 ? FirstReach * start : 1;
        }

        return factor;
    }

    // A parameter at a bound is held where the sum of squares falls only beyond it.
    private bool IsHeld(int k)
    {
        double value = point.Parameters[k];
        if (value > problem.Lower[k] && value < problem.Upper[k])
        {
            return false;
        }

        double fall = 0;
        for (int i = 0; i < point.Residuals.Length; i++)
        {
            fall += point.Residuals[i] * point.Derivatives[(k * point.Residuals.Length) + i];
        }

        return value <= problem.Lower[k] ? fall <= 0 : fall >= 0;
    }

    private double[] Scales() => [.. Free.Select(k => scale[k] > 0 ? scale[k] : 1)];

    private double[] Moved(double[] step, out double[] taken)
    {
        double[] moved = [.. point.Parameters];
        taken = new double[step.Length];
        for (int j = 0; j < step.Length; j++)
        {
            int k = Free[j];
            moved[k] = Math.Clamp(moved[k] + step[j], problem.Lower[k], problem.Upper[k]);
            taken[j] = moved[k] - point.Parameters[k];
        }

        return moved;
    }

    private double Length(double[] step) => TriangularFactor.Norm([.. step.Zip(Scales(), (part, unit) => part * unit)]);

    private double Length(double[] parameters, List<int> free) => Length([.. free.Select(k => parameters[k])]);
}
