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
}
