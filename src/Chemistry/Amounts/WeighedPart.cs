using Calx.Chemistry.Elements;
using Calx.Chemistry.Formulas;
using Calx.Measurement.Numbers;
using Calx.Measurement.Uncertainty;

namespace Calx.Chemistry.Amounts;

/// <summary>One part of a compound (an element, or the salt or the water of a hydrate) with the mass found of it.</summary>
public sealed class WeighedPart
{
    /// <summary>Describes a part.</summary>
    /// <param name="symbol">What stands for it in a formula: <c>Mg</c>, <c>CuSO4</c>, <c>H2O</c>.</param>
    /// <param name="molarMassInGramsPerMole">Its molar mass, above 0; one atomic weights' instance for all parts keeps
    /// their shared errors together.</param>
    /// <param name="massInGrams">Its mass; masses that share readings keep that correlation.</param>
    /// <exception cref="ArgumentException">The symbol is empty or the molar mass is not above 0.</exception>
    public WeighedPart(string symbol, UncertainValue molarMassInGramsPerMole, UncertainValue massInGrams)
    {
        ArgumentException.ThrowIfNullOrWhiteSpace(symbol);
        ArgumentNullException.ThrowIfNull(molarMassInGramsPerMole);
        ArgumentNullException.ThrowIfNull(massInGrams);
        ArgumentOutOfRangeException.ThrowIfNegativeOrZero(molarMassInGramsPerMole.Value, nameof(molarMassInGramsPerMole));
        Symbol = symbol;
        MolarMassInGramsPerMole = molarMassInGramsPerMole;
        MassInGrams = massInGrams;
    }

    /// <summary>What stands for it in a formula.</summary>
    public string Symbol { get; }

    /// <summary>Its molar mass, in g/mol.</summary>
    public UncertainValue MolarMassInGramsPerMole { get; }

    /// <summary>The mass found, in g.</summary>
    public UncertainValue MassInGrams { get; }

    /// <summary>A part given by its formula: <c>O</c> for the element, <c>CuSO4</c> or <c>H2O</c> for a hydrate's.</summary>
    /// <param name="formula">Its formula; a state written behind it is left out.</param>
    /// <param name="weights">The atomic weights, one instance for all parts of the compound.</param>
    /// <param name="massInGrams">Its mass.</param>
    /// <returns>The part, or the fault that an element has no atomic weight in the set.</returns>
    public static Parsed<WeighedPart> Of(Formula formula, AtomicWeights weights, UncertainValue massInGrams)
    {
        ArgumentNullException.ThrowIfNull(formula);
        Parsed<UncertainValue> molarMass = formula.FindMolarMass(weights);
        return molarMass.Succeeded
            ? new WeighedPart(FormulaName.WithoutState(formula), molarMass.Value, massInGrams)
            : molarMass.Fault;
    }
}
