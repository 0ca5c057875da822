namespace Calx.Practicals.Definition;

/// <summary>How a substance is classified by the Globally Harmonized System, as far as it was looked up. A supplier's data sheet, in the form
/// and concentration that is used, decides.</summary>
public sealed class GhsClassification(GhsSignal signal, IReadOnlyList<string> classes, IReadOnlyList<string> codes, Provenance provenance)
{
    /// <summary>The signal word.</summary>
    public GhsSignal Signal { get; } = signal;

    /// <summary>Hazard classes with their categories, such as <c>Eye Dam. 1</c>; empty where it is not classified.</summary>
    public IReadOnlyList<string> Classes { get; } = classes;

    /// <summary>Codes of the hazard statements, such as <c>H318</c>.</summary>
    public IReadOnlyList<string> Codes { get; } = codes;

    /// <summary>How far it can be trusted.</summary>
    public Standing Standing => provenance.Standing;

    /// <summary>Its source, or null.</summary>
    public string? Source => provenance.Source;
}
