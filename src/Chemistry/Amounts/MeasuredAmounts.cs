using Calx.Measurement.Uncertainty;

namespace Calx.Chemistry.Amounts;

/// <summary>
/// Amounts of the parts of one compound as measured: estimates and covariance in mol, normal. Shared readings and
/// shared atomic weights are in the covariance.
/// </summary>
internal sealed class MeasuredAmounts
{
    public MeasuredAmounts(IReadOnlyList<WeighedPart> parts)
    {
        UncertainValue[] amounts = [.. parts.Select(part => part.MassInGrams / part.MolarMassInGramsPerMole)];
        Estimates = Array.ConvertAll(amounts, amount => amount.Value);
        MolarMasses = [.. parts.Select(part => part.MolarMassInGramsPerMole.Value)];
        Covariance = new double[amounts.Length, amounts.Length];
        for (int i = 0; i < amounts.Length; i++)
        {
            for (int j = 0; j <= i; j++)
            {
                Covariance[i, j] = Covariance[j, i] = UncertainValue.Covariance(amounts[i], amounts[j]);
            }
        }
    }

    public double[] Estimates { get; }

    public double[] MolarMasses { get; }

    public double[,] Covariance { get; }
}
