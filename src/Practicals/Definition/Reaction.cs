namespace Calx.Practicals.Definition;

/// <summary>A reaction between materials of the practical, by a balanced equation.</summary>
public sealed class Reaction(
    string id,
    string equationText,
    string limiting,
    IReadOnlyList<ReactionTerm> reactants,
    IReadOnlyList<ReactionTerm> products,
    FilePosition at)
{
    /// <summary>Its id, unique among the reactions.</summary>
    public string Id { get; } = id;

    /// <summary>The equation as written.</summary>
    public string EquationText { get; } = equationText;

    /// <summary>Id of the reactant of which a fraction reacts.</summary>
    public string Limiting { get; } = limiting;

    /// <summary>What is used up, in the order of the equation.</summary>
    public IReadOnlyList<ReactionTerm> Reactants { get; } = reactants;

    /// <summary>What is made, in the order of the equation.</summary>
    public IReadOnlyList<ReactionTerm> Products { get; } = products;

    /// <summary>Where it stands in the file.</summary>
    public FilePosition At { get; } = at;
}
