namespace Calx.Practicals.Definition;

/// <summary>A reaction that the class may hold for the true one; the key quantity decides between them.</summary>
public sealed class Alternative(
    string id, string label, string equationText, string sample, IReadOnlyList<string> stays, FilePosition at)
{
    /// <summary>Its id, unique among the alternatives.</summary>
    public string Id { get; } = id;

    /// <summary>Its name for people.</summary>
    public string Label { get; } = label;

    /// <summary>Its balanced equation as written.</summary>
    public string EquationText { get; } = equationText;

    /// <summary>The reactant, as written in the equation, whose mass is that of the sample.</summary>
    public string Sample { get; } = sample;

    /// <summary>The products, as written in the equation, that stay in the vessel.</summary>
    public IReadOnlyList<string> Stays { get; } = stays;

    /// <summary>Where it stands in the file.</summary>
    public FilePosition At { get; } = at;
}
