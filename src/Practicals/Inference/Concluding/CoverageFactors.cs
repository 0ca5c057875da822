using Calx.Measurement.Distributions;

namespace Calx.Practicals.Inference.Concluding;

/// <summary>How many standard uncertainties a 95 % interval of Student's t reaches to either side, from a table: a plan asks a
/// hundred thousand times.</summary>
internal static class CoverageFactors
{
    private const int Steps = 512;

    /// <summary>Even in 1/ν from 0 to 1, between which the factor bends so little that straight lines are good to a thousandth.</summary>
    private static readonly double[] Table = [.. Enumerable.Range(0, Steps + 1).Select(i => i == 0 ? ConclusionRule.Normal95 : StudentT.Quantile(0.975, (double)Steps / i))];

    /// <summary>The factor for 1 degree of freedom or more.</summary>
    public static double Of(double degreesOfFreedom)
    {
        double place = Steps / degreesOfFreedom;
        int below = Math.Min((int)place, Steps - 1);
        return Table[below] + ((place - below) * (Table[below + 1] - Table[below]));
    }
}
