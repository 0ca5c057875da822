using Calx.Measurement.Uncertainty;

namespace Calx.Chemistry.Amounts;

/// <summary>One substance of a balanced reaction.</summary>
public sealed class ReactionPart
{
    /// <summary>Describes a substance in a reaction.</summary>
    /// <param name="formula">Its formula, as it is named elsewhere in the reckoning.</param>
    /// <param name="number">Its whole number in the balanced equation, above 0.</param>
    /// <param name="molarMassInGramsPerMole">Its molar mass, above 0.</param>
    /// <exception cref="ArgumentException">The formula is empty, or a number is not above 0.</exception>
    public ReactionPart(string formula, long number, UncertainValue molarMassInGramsPerMole)
    {
        ArgumentException.ThrowIfNullOrWhiteSpace(formula);
        ArgumentOutOfRangeException.ThrowIfNegativeOrZero(number);
        ArgumentNullException.ThrowIfNull(molarMassInGramsPerMole);
        ArgumentOutOfRangeException.ThrowIfNegativeOrZero(molarMassInGramsPerMole.Value, nameof(molarMassInGramsPerMole));
        Formula = formula;
        Number = number;
        MolarMassInGramsPerMole = molarMassInGramsPerMole;
    }

    /// <summary>Its formula.</summary>
    public string Formula { get; }

    /// <summary>Its whole number in the balanced equation.</summary>
    public long Number { get; }

    /// <summary>Its molar mass, in g/mol.</summary>
    public UncertainValue MolarMassInGramsPerMole { get; }

    /// <summary>Grams of it that take part when the reaction runs once as written, in moles.</summary>
    public UncertainValue GramsPerMoleOfReaction => Number * MolarMassInGramsPerMole;
}
