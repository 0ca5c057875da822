namespace Calx.Measurement.Statistics.Series;

/// <summary>
/// Turns readings with correlated noise into uncorrelated ones of variance 1: each less what those before it foretell
/// (Kalman, J. Basic Eng. 82 (1960) 35, with a state of one number). That is L⁻¹y for the covariance V = LLᵀ, in a time that
/// grows with the number of readings only, and for uneven times.
/// </summary>
internal sealed class NoiseFilter
{
    private readonly double[] carry;
    private readonly double[] gain;
    private readonly double[] scale;
    private readonly bool plain;

    public NoiseFilter(double[] times, NoiseNode noise)
    {
        carry = new double[times.Length];
        gain = new double[times.Length];
        scale = new double[times.Length];
        plain = noise is { Shared: 0, WalkPerTime: 0 };
        double state = noise.Shared;
        for (int i = 0; i < times.Length; i++)
        {
            if (i > 0)
            {
                double gap = times[i] - times[i - 1];
                carry[i] = noise.Shared > 0 ? Math.Exp(-gap / noise.SharedTime) : 1;
                double kept = carry[i] * carry[i];
                state = (kept * state) + (noise.Shared * (1 - kept)) + (noise.WalkPerTime * gap);
            }

            double variance = state + noise.White;
            gain[i] = state / variance;
            scale[i] = 1 / Math.Sqrt(variance);
            LogDeterminant += Math.Log(variance);
            state = gain[i] * noise.White;
        }
    }

    /// <summary>ln |V|.</summary>
    public double LogDeterminant { get; }

    /// <summary>Filters a column; what lies beyond the readings is left alone.</summary>
    public void Apply(ReadOnlySpan<double> column, Span<double> into)
    {
        if (plain)
        {
            for (int i = 0; i < scale.Length; i++)
            {
                into[i] = column[i] * scale[i];
            }

            return;
        }

        double state = 0;
        for (int i = 0; i < scale.Length; i++)
        {
            double foretold = carry[i] * state;
            double rest = column[i] - foretold;
            into[i] = rest * scale[i];
            state = foretold + (gain[i] * rest);
        }
    }
}
