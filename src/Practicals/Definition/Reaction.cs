namespace Calx.Practicals.Definition;

/// <summary>A reaction between materials of the practical, by a balanced equation.</summary>
public sealed class Reaction(
    string id, string equationText, string limiting, IReadOnlyDictionary<string, string> materials, FilePosition at)
{
    /// <summary>Its id, unique among the reactions.</summary>
    public string Id { get; } = id;

    /// <summary>The equation as written.</summary>
    public string EquationText { get; } = equationText;

    /// <summary>Id of the material of which a fraction reacts.</summary>
    public string Limiting { get; } = limiting;

    /// <summary>For each formula of the equation, as written there, the id of the material it means.</summary>
    public IReadOnlyDictionary<string, string> Materials { get; } = materials;

    /// <summary>Where it stands in the file.</summary>
    public FilePosition At { get; } = at;
}
