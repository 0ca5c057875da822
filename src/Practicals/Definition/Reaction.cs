using Calx.Chemistry.Equations;

namespace Calx.Practicals.Definition;

/// <summary>A reaction between materials of the practical, by a balanced equation.</summary>
public sealed class Reaction(
    string id,
    Equation equation,
    string limiting,
    IReadOnlyList<ReactionTerm> reactants,
    IReadOnlyList<ReactionTerm> products,
    FilePosition at)
{
    /// <summary>Its id, unique among the reactions.</summary>
    public string Id { get; } = id;

    /// <summary>Its equation, balanced as it stands.</summary>
    public Equation Equation { get; } = equation;

    /// <summary>The equation in plain text.</summary>
    public string EquationText => Equation.ToString();

    /// <summary>Id of the reactant of which a fraction reacts.</summary>
    public string Limiting { get; } = limiting;

    /// <summary>What is used up, in the order of the equation.</summary>
    public IReadOnlyList<ReactionTerm> Reactants { get; } = reactants;

    /// <summary>What is made, in the order of the equation.</summary>
    public IReadOnlyList<ReactionTerm> Products { get; } = products;

    /// <summary>Where it stands in the file.</summary>
    public FilePosition At { get; } = at;
}
