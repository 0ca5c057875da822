using Calx.Measurement.Distributions;

namespace Calx.Practicals.Inference;

/// <summary>
/// The most that a quantity can be which cannot be negative, after a measurement of it that may itself have come out
/// negative.
/// </summary>
internal static class NonNegativeBound
{
    /// <summary>So far below 0 the cut-off normal is an exponential to 0.3 %, and its own tail soon underflows.</summary>
    private const double FarBelow = 30;

    /// <summary>
    /// The bound below which the quantity lies with probability <paramref name="coverage"/>, all values from 0 upwards
    /// being equally credible beforehand: the normal of the measurement, cut off at 0.
    /// </summary>
    /// <param name="measured">What was measured, any sign.</param>
    /// <param name="standardUncertainty">Its standard uncertainty, above 0.</param>
    /// <param name="coverage">Between 0 and 1; the interval is one-sided.</param>
    /// <returns>A number above 0. Far above 0 it is the ordinary one-sided bound; for a measurement far below 0 it
    /// shrinks towards 0 but never turns negative.</returns>
    public static double Upper(double measured, double standardUncertainty, double coverage)
    {
        double below = -measured / standardUncertainty;
        if (below > FarBelow)
        {
            return standardUncertainty * -Math.Log(1 - coverage) / below;
        }

        double stillAbove = (1 - coverage) * StandardNormal.UpperTail(below);
        return Math.Max(0, measured - standardUncertainty * StandardNormal.Quantile(stillAbove));
    }
}
