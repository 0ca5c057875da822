namespace Calx.Practicals.Inference.Posterior;

/// <summary>How far each fault moved the key difference at a point: straight lines in the amounts.</summary>
/// <param name="intercepts">In g, fault by fault; the last is that of all together.</param>
/// <param name="slopes">In g per g, fault by fault, amount by amount.</param>
internal sealed class PointEffects(double[] intercepts, double[] slopes)
{
    private readonly int amountCount = slopes.Length / intercepts.Length;

    /// <summary>In g for given amounts: fault by fault.</summary>
    /// <returns>How far all together moved it.</returns>
    public double At(ReadOnlySpan<double> amounts, Span<double> moved)
    {
        for (int f = 0; f < intercepts.Length - 1; f++)
        {
            moved[f] = Of(f, amounts);
        }

        return Of(intercepts.Length - 1, amounts);
    }

    private double Of(int fault, ReadOnlySpan<double> amounts)
    {
        double sum = intercepts[fault];
        for (int a = 0; a < amountCount; a++)
        {
            sum += slopes[(fault * amountCount) + a] * amounts[a];
        }

        return sum;
    }
}
