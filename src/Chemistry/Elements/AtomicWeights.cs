using Calx.Measurement.Uncertainty;

namespace Calx.Chemistry.Elements;

/// <summary>
/// One declared set of atomic weights in g/mol. Within a set the weight of an element is one and the same input, so
/// that all atoms of it, in whatever formulas, share its error (docs/methods/molar-mass.md).
/// </summary>
public sealed class AtomicWeights
{
    private readonly UncertainValue?[] weights;

    internal AtomicWeights(string name, string description, UncertainValue?[] weights)
    {
        Name = name;
        Description = description;
        this.weights = weights;
    }

    /// <summary>
    /// IUPAC 2021 with the changes of 2024 (Zr, Gd, Lu). An interval [a, b] is read as a rectangular distribution:
    /// its middle, with standard uncertainty (b - a)/(2√3). A single value is read as rectangular too, the printed
    /// uncertainty U being half its width: standard uncertainty U/√3. This is the rule of IUPAC's guidance (Possolo
    /// et al., Pure Appl. Chem. 90 (2018) 395), from memory.
    /// </summary>
    public static AtomicWeights Iupac2024 => AtomicWeightSets.Iupac2024;

    /// <summary>The set's identifier, as options and files write it: <c>school-1dp</c>.</summary>
    public string Name { get; }

    /// <summary>What the set is, in a sentence for a person.</summary>
    public string Description { get; }

    /// <summary>Whether the set has a weight for an element; technetium, for one, has no standard weight.</summary>
    public bool Has(Element element)
    {
        ArgumentNullException.ThrowIfNull(element);
        return weights[element.Index] is not null;
    }

    /// <summary>The weight of an element in g/mol: the same input at every call.</summary>
    /// <exception cref="InvalidOperationException">The set has none: ask <see cref="Has"/> first.</exception>
    public UncertainValue Of(Element element)
    {
        ArgumentNullException.ThrowIfNull(element);
        return weights[element.Index] ?? throw new InvalidOperationException(WhyNone(element));
    }

    internal static string WhyNone(Element element)
        => $"{element.Name} has no standard atomic weight, because its isotopes on earth have no fixed proportions";
}
