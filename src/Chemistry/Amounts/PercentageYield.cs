using Calx.Measurement.Uncertainty;

namespace Calx.Chemistry.Amounts;

/// <summary>A percentage yield, or why there is none.</summary>
public abstract record PercentageYield
{
    private PercentageYield()
    {
    }

    /// <summary>
    /// 100 times the mass found over the theoretical yield. Masses that share readings or atomic weights keep that
    /// correlation, which often halves the uncertainty. More than 100 % is an answer: something beside the product was
    /// weighed, or chance.
    /// </summary>
    /// <param name="massInGrams">The mass of product found, in g.</param>
    /// <param name="theoreticalInGrams">The theoretical yield, in g.</param>
    public static PercentageYield Of(UncertainValue massInGrams, UncertainValue theoreticalInGrams)
    {
        ArgumentNullException.ThrowIfNull(massInGrams);
        ArgumentNullException.ThrowIfNull(theoreticalInGrams);
        if (theoreticalInGrams.Value <= 0)
        {
            return new CannotTell("the theoretical yield is not above 0, so there is nothing to compare with");
        }

        return massInGrams.Value < 0
            ? new CannotTell("the mass of product comes out negative; check the readings it is found from")
            : new Found(100 * massInGrams / theoreticalInGrams);
    }

    /// <summary>The yield.</summary>
    /// <param name="Percent">In per cent.</param>
    public sealed record Found(UncertainValue Percent) : PercentageYield;

    /// <summary>There is none.</summary>
    /// <param name="Reason">Why, for a person.</param>
    public sealed record CannotTell(string Reason) : PercentageYield;
}
