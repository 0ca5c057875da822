using Calx.Measurement.Uncertainty;

namespace Calx.Chemistry.Amounts;

/// <summary>A reactant with the mass that was put in.</summary>
public sealed class WeighedReagent
{
    /// <summary>Describes a reagent.</summary>
    /// <param name="formula">Its formula, as in the reaction.</param>
    /// <param name="massInGrams">The mass put in.</param>
    /// <exception cref="ArgumentException">The formula is empty.</exception>
    public WeighedReagent(string formula, UncertainValue massInGrams)
    {
        ArgumentException.ThrowIfNullOrWhiteSpace(formula);
        ArgumentNullException.ThrowIfNull(massInGrams);
        Formula = formula;
        MassInGrams = massInGrams;
    }

    /// <summary>Its formula.</summary>
    public string Formula { get; }

    /// <summary>The mass put in, in g.</summary>
    public UncertainValue MassInGrams { get; }
}
