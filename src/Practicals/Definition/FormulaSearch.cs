using Calx.Chemistry.Formulas;

namespace Calx.Practicals.Definition;

/// <summary>How an empirical formula is sought from the readings.</summary>
public sealed class FormulaSearch(
    IReadOnlyDictionary<string, string> elements, int largest, Formula accepted, FilePosition at)
{
    /// <summary>For each element (or group of atoms, as a formula) the id of the quantity that is its mass in g.</summary>
    public IReadOnlyDictionary<string, string> Elements { get; } = elements;

    /// <summary>The largest whole number tried, from 1.</summary>
    public int Largest { get; } = largest;

    /// <summary>The accepted formula.</summary>
    public Formula Accepted { get; } = accepted;

    /// <summary>Where it stands in the file.</summary>
    public FilePosition At { get; } = at;
}
