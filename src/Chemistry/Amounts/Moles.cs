using Calx.Chemistry.Elements;
using Calx.Chemistry.Formulas;
using Calx.Measurement.Numbers;
using Calx.Measurement.Uncertainty;

namespace Calx.Chemistry.Amounts;

/// <summary>Amount of substance from mass and back. Signs pass through, so that a difference of masses may be given.</summary>
public static class Moles
{
    /// <summary>The amount in mol: mass over molar mass.</summary>
    /// <param name="massInGrams">The mass, in g.</param>
    /// <param name="formula">What it is.</param>
    /// <param name="weights">The atomic weights; one instance for a whole calculation, so that errors are shared.</param>
    /// <returns>The amount, or the fault that an element has no atomic weight in the set.</returns>
    public static Parsed<UncertainValue> FromMass(UncertainValue massInGrams, Formula formula, AtomicWeights weights)
    {
        ArgumentNullException.ThrowIfNull(massInGrams);
        ArgumentNullException.ThrowIfNull(formula);
        Parsed<UncertainValue> molarMass = formula.FindMolarMass(weights);
        return molarMass.Succeeded ? massInGrams / molarMass.Value : molarMass;
    }

    /// <summary>The mass in g: amount times molar mass.</summary>
    /// <param name="moles">The amount, in mol.</param>
    /// <param name="formula">What it is.</param>
    /// <param name="weights">The atomic weights; one instance for a whole calculation, so that errors are shared.</param>
    /// <returns>The mass, or the fault that an element has no atomic weight in the set.</returns>
    public static Parsed<UncertainValue> ToMass(UncertainValue moles, Formula formula, AtomicWeights weights)
    {
        ArgumentNullException.ThrowIfNull(moles);
        ArgumentNullException.ThrowIfNull(formula);
        Parsed<UncertainValue> molarMass = formula.FindMolarMass(weights);
        return molarMass.Succeeded ? moles * molarMass.Value : molarMass;
    }
}
