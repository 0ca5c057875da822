namespace Calx.Measurement.Distributions;

/// <summary>
/// Finds where a tail probability has a given value. The variable is scaled so that the density is log-concave (the
/// logarithm of a gamma variable, the logit of a beta variable); then the logarithm of either tail is concave, and
/// Newton's method on it converges from anywhere: after at most one step too far it closes in from one side.
/// </summary>
internal static class TailEquation
{
    private const int MostSteps = 200;

    /// <summary>The point whose tail has the given logarithm.</summary>
    /// <param name="tail">Logarithm of the tail at a point, and its slope there.</param>
    /// <param name="logTarget">Logarithm of the tail wanted, at most ln ½ or so: take the smaller tail.</param>
    /// <param name="start">Where to begin: the mode.</param>
    /// <exception cref="ArithmeticException">The search did not settle.</exception>
    public static double Solve(Func<double, (double Log, double Slope)> tail, double logTarget, double start)
    {
        double point = start;
        double lastSize = double.PositiveInfinity;
        for (int step = 0; step < MostSteps; step++)
        {
            (double log, double slope) = tail(point);
            double move = (logTarget - log) / slope;
            point += move;
            double size = Math.Abs(move);
            double floor = 4e-16 * Math.Max(1e-3, Math.Abs(point));
            // Rounding in the tail makes the last moves wander: a tiny move that is not smaller than the one before.
            if (size <= floor || (size >= lastSize && size <= 1e4 * floor))
            {
                return point;
            }

            lastSize = size;
        }

        throw new ArithmeticException(
            $"Quantile: no point with tail exp({logTarget}) found in {MostSteps} steps, the last was {point}.");
    }
}
