using System.Globalization;
using Calx.Measurement.Uncertainty;

namespace Calx.Chemistry.Amounts;

/// <summary>How many molecules of water a hydrate holds for each formula unit of salt.</summary>
public static class WaterOfCrystallisation
{
    /// <summary>Moles of water per mole of salt, as measured: no whole number is forced.</summary>
    /// <exception cref="UndefinedResultException">The salt's mass is 0.</exception>
    public static UncertainValue Ratio(WeighedPart salt, WeighedPart water)
    {
        ArgumentNullException.ThrowIfNull(salt);
        ArgumentNullException.ThrowIfNull(water);
        return water.MassInGrams / water.MolarMassInGramsPerMole / (salt.MassInGrams / salt.MolarMassInGramsPerMole);
    }

    /// <summary>Every whole number of water molecules from 0 to the limit, ranked by its probability.</summary>
    /// <param name="salt">The salt without water and its mass.</param>
    /// <param name="water">Water and the mass of it that was driven off.</param>
    /// <param name="prior">What is thought beforehand; the usual judgement where null.</param>
    public static FormulaRanking Candidates(WeighedPart salt, WeighedPart water, HydratePrior? prior = null)
    {
        ArgumentNullException.ThrowIfNull(salt);
        ArgumentNullException.ThrowIfNull(water);
        prior ??= new HydratePrior();
        if ((PartMass.Fault(salt) ?? PartMass.Fault(water)) is { } reason)
        {
            return new FormulaRanking.Undetermined(reason);
        }

        WholeNumberPosterior.Entry[] entries = [.. Enumerable.Range(0, prior.MostWater + 1)
            .Select(number => new WholeNumberPosterior.Entry(Text(salt, water, number), [1, number], 0))];
        return WholeNumberPosterior.Rank(new MeasuredAmounts([salt, water]), entries, prior.NoneOfThese);
    }

    private static string Text(WeighedPart salt, WeighedPart water, int number) => number switch
    {
        0 => salt.Symbol,
        1 => $"{salt.Symbol}·{water.Symbol}",
        _ => string.Create(CultureInfo.InvariantCulture, $"{salt.Symbol}·{number}{water.Symbol}"),
    };
}
