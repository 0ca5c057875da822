namespace Calx.Measurement.Statistics.Nonlinear;

/// <summary>
/// The step to the least of ‖Jδ - r‖² within ‖Dδ‖ ≤ reach: δ = D⁻¹ V (S² + λ)⁻¹ S Uᵀ r, with λ found by Hebden's iteration.
/// </summary>
internal sealed class TrustStep
{
    private const int MostTries = 60;

    // A singular value of this share of the largest is rounding: no step along it.
    private const double Nothing = 1e-15;

    private readonly SingularFactor singular;
    private readonly double[] along;
    private readonly double[] scale;
    private readonly double least;

    public TrustStep(SingularFactor singular, ReadOnlySpan<double> reach, double[] scale)
    {
        this.singular = singular;
        this.scale = scale;
        along = singular.Project(reach);
        least = Nothing * singular.Values.Max();
    }

    /// <param name="reach">The longest step allowed, in the scale's unit; +∞ for the full step.</param>
    /// <param name="whole">Whether the full step lies within.</param>
    public double[] Within(double reach, out bool whole)
    {
        whole = Length(0) <= 1.1 * reach;
        return At(whole ? 0 : Damping(reach));
    }

    // 1/length is nearly a straight line in λ, so Newton's steps on it are few.
    private double Damping(double reach)
    {
        double low = 0;
        double[] slopes = [.. along.Zip(singular.Values, (part, value) => part * value)];
        double high = TriangularFactor.Norm(slopes) / reach;
        double damping = 0;
        for (int i = 0; i < MostTries; i++)
        {
            double length = Length(damping);
            if (Math.Abs(length - reach) <= 0.1 * reach)
            {
                return damping;
            }

            (low, high) = length > reach ? (Math.Max(low, damping), high) : (low, Math.Min(high, damping));
            double next = damping + ((length - reach) / reach * length * length / Slope(damping));
            damping = next > low && next < high ? next : Math.Max(Math.Sqrt(low * high), high / 1000);
        }

        return high;
    }

    private double Length(double damping)
    {
        double sum = 0;
        for (int j = 0; j < along.Length; j++)
        {
            double part = Part(j, damping);
            sum += part * part;
        }

        return Math.Sqrt(sum);
    }

    // -½ d(length²)/dλ.
    private double Slope(double damping)
    {
        double sum = 0;
        for (int j = 0; j < along.Length; j++)
        {
            double part = Part(j, damping);
            double value = singular.Values[j];
            sum += value > least ? part * part / ((value * value) + damping) : 0;
        }

        return sum > 0 ? sum : double.Epsilon;
    }

    private double Part(int j, double damping)
    {
        double value = singular.Values[j];
        return value > least ? along[j] * value / ((value * value) + damping) : 0;
    }

    private double[] At(double damping)
    {
        var step = new double[along.Length];
        for (int k = 0; k < step.Length; k++)
        {
            for (int j = 0; j < step.Length; j++)
            {
                step[k] += singular.Directions[k, j] * Part(j, damping);
            }

            step[k] /= scale[k];
        }

        return step;
    }
}
