namespace Calx.Measurement.Statistics.Series;

/// <summary>
/// What the readings say of the start y₀ and the loss L under one assumption about the noise, for any course of the curve: with
/// the course given, y = y₀ - L · gone is a straight line, and the drift and the jumps are further straight parts.
/// </summary>
internal sealed class ConditionalFit
{
    private readonly NoiseFilter filter;
    private readonly NoiseNode noise;
    private readonly double[][] units;
    private readonly double[] unitOfStart;
    private readonly double[] rest;
    private readonly double[] work;
    private readonly double lengthOfStart;
    private readonly double shareOfStart;
    private readonly double logLengths;
    private readonly double leastScale;

    /// <param name="rows">The readings.</param>
    /// <param name="noise">The assumption.</param>
    /// <param name="drift">Standard uncertainty of the drift over the scale of the noise; 0 for none.</param>
    public ConditionalFit(SeriesRows rows, NoiseNode noise, double drift)
    {
        this.noise = noise;
        filter = new NoiseFilter(rows.Times, noise);
        // What is known of the drift beforehand is one more reading: of the drift itself, 0 with its own uncertainty.
        int length = rows.Count + (drift > 0 ? 1 : 0);
        List<double[]> columns = [.. rows.Jumps.Select(jump => Filtered(jump, length))];
        if (drift > 0)
        {
            double[] slope = Filtered(rows.Times, length);
            slope[^1] = 1 / drift;
            columns.Add(slope);
            // The density of that reading, which differs between assumptions about the noise.
            logLengths += Math.Log(drift);
        }

        rest = Filtered(rows.Values, length);
        work = new double[length];
        units = new double[columns.Count][];
        for (int k = 0; k < units.Length; k++)
        {
            logLengths += Math.Log(Straighten(columns[k], k));
            units[k] = columns[k];
            TakeOut(units[k], rest);
        }

        var ones = new double[rows.Count];
        Array.Fill(ones, 1);
        unitOfStart = Filtered(ones, length);
        lengthOfStart = Straighten(unitOfStart, units.Length);
        shareOfStart = TakeOut(unitOfStart, rest);
        logLengths += Math.Log(lengthOfStart);
        Whole = Dot(rest, rest);
        DegreesOfFreedom = length - units.Length - 2;
        double rounding = rows.Resolution * rows.Resolution / 12;
        leastScale = noise.ScaleIsKnown ? 1 : rounding / Math.Max(noise.White, 1e-12);
    }

    /// <summary>Readings less straight parts.</summary>
    public int DegreesOfFreedom { get; }

    /// <summary>The sum of squares about a level.</summary>
    public double Whole { get; }

    /// <summary>The answer for one course.</summary>
    /// <param name="gone">The share of the change that is over at each reading.</param>
    public LinearPart At(ReadOnlySpan<double> gone)
    {
        work.AsSpan().Clear();
        filter.Apply(gone, work);
        foreach (double[] unit in units)
        {
            TakeOut(unit, work);
        }

        double along = TakeOut(unitOfStart, work);
        double square = Dot(work, work);
        double share = Dot(work, rest);
        // A course that the level and the jumps already describe says nothing about the loss.
        double slope = square > 1e-14 * work.Length ? share / square : 0;
        double variance = square > 1e-14 * work.Length ? 1 / square : 1e14;
        double left = Math.Max(0, Whole - (slope * share));
        (double scale, double logHeight) = Scale(left);
        return new LinearPart(
            (shareOfStart - (along * slope)) / lengthOfStart,
            -slope,
            (1 + (along * along * variance)) / (lengthOfStart * lengthOfStart) * scale,
            variance * scale,
            along / lengthOfStart * variance * scale,
            noise.White * scale,
            noise.Shared * scale,
            noise.WalkPerTime * scale,
            left,
            noise.LogPrior + logHeight - (filter.LogDeterminant / 2) - logLengths + (Math.Log(variance) / 2));
    }

    // The scale of the noise is averaged over (every logarithm of it equally likely) where it is not known; it is never
    // less than what rounding alone makes of it.
    private (double Scale, double LogHeight) Scale(double squares)
    {
        double scale = squares / DegreesOfFreedom;
        if (!noise.ScaleIsKnown && scale > leastScale)
        {
            return (scale, -0.5 * DegreesOfFreedom * Math.Log(squares));
        }

        double atLeast = (-0.5 * squares / leastScale) - (0.5 * DegreesOfFreedom * Math.Log(leastScale));
        double joined = noise.ScaleIsKnown ? 0 : 0.5 * DegreesOfFreedom * (1 - Math.Log(DegreesOfFreedom));
        return (leastScale, atLeast + joined);
    }

    private double[] Filtered(double[] column, int length)
    {
        var filtered = new double[length];
        filter.Apply(column, filtered);
        return filtered;
    }

    private double Straighten(double[] column, int before)
    {
        for (int k = 0; k < before; k++)
        {
            TakeOut(units[k], column);
        }

        double length = Math.Max(Math.Sqrt(Dot(column, column)), 1e-150);
        for (int i = 0; i < column.Length; i++)
        {
            column[i] /= length;
        }

        return length;
    }

    private static double TakeOut(double[] unit, double[] from)
    {
        double share = Dot(unit, from);
        for (int i = 0; i < from.Length; i++)
        {
            from[i] -= share * unit[i];
        }

        return share;
    }

    private static double Dot(double[] left, double[] right)
    {
        double sum = 0;
        for (int i = 0; i < left.Length; i++)
        {
            sum += left[i] * right[i];
        }

        return sum;
    }
}

/// <summary>Start and loss for one course and one assumption about the noise.</summary>
/// <param name="Start">y₀ less the first reading.</param>
/// <param name="Loss">L.</param>
/// <param name="StartVariance">Variance of the start.</param>
/// <param name="LossVariance">Variance of the loss.</param>
/// <param name="Covariance">Their covariance.</param>
/// <param name="WhiteVariance">Variance of a single reading by itself.</param>
/// <param name="SharedVariance">Variance that readings near in time share.</param>
/// <param name="WalkPerTime">Variance that a random walk gains in a unit of time.</param>
/// <param name="Squares">The sum of squares about the curve, filtered.</param>
/// <param name="LogHeight">Logarithm of the likelihood, start, loss and scale averaged over, and the prior of the noise.</param>
internal readonly record struct LinearPart(
    double Start,
    double Loss,
    double StartVariance,
    double LossVariance,
    double Covariance,
    double WhiteVariance,
    double SharedVariance,
    double WalkPerTime,
    double Squares,
    double LogHeight);
