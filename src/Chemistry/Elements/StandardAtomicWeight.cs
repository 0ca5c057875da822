namespace Calx.Chemistry.Elements;

/// <summary>
/// A standard atomic weight as IUPAC publishes it, in decimals as printed. Dimensionless; the same number in g/mol is
/// the molar mass. Source: see the head of elements.txt.
/// </summary>
public abstract record StandardAtomicWeight
{
    private StandardAtomicWeight()
    {
    }

    /// <summary>
    /// The weights found in normal materials of the earth reach from <paramref name="Low"/> to <paramref name="High"/>.
    /// </summary>
    /// <param name="Low">Least value.</param>
    /// <param name="High">Greatest value.</param>
    /// <param name="Abridged">The value IUPAC gives where one number is wanted.</param>
    /// <param name="AbridgedUncertainty">The uncertainty printed with <paramref name="Abridged"/>.</param>
    public sealed record Interval(decimal Low, decimal High, decimal Abridged, decimal AbridgedUncertainty)
        : StandardAtomicWeight;

    /// <summary>One value with IUPAC's decisional uncertainty.</summary>
    /// <param name="Value">The value.</param>
    /// <param name="Uncertainty">Half the width of the span that IUPAC holds to cover normal materials.</param>
    public sealed record SingleValue(decimal Value, decimal Uncertainty) : StandardAtomicWeight;

    /// <summary>The element has no stable isotopic composition on earth, hence no standard weight.</summary>
    public sealed record NotDefined : StandardAtomicWeight;
}
