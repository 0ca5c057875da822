using Calx.Measurement.Uncertainty;

namespace Calx.Chemistry.Amounts;

/// <summary>
/// A balanced reaction with molar masses: what the reckoning of masses needs of an equation. Molar masses from one set
/// of atomic weights share their errors, so that a ratio of two substances with the same atoms is better known than
/// either.
/// </summary>
public sealed class Reaction
{
    /// <summary>Takes the substances of both sides.</summary>
    /// <exception cref="ArgumentException">A side is empty, or one side names a formula twice.</exception>
    public Reaction(IReadOnlyList<ReactionPart> reactants, IReadOnlyList<ReactionPart> products)
    {
        Reactants = Side(reactants, nameof(reactants));
        Products = Side(products, nameof(products));
    }

    /// <summary>The substances used up.</summary>
    public IReadOnlyList<ReactionPart> Reactants { get; }

    /// <summary>The substances made.</summary>
    public IReadOnlyList<ReactionPart> Products { get; }

    /// <summary>The reactant of this formula, or null.</summary>
    public ReactionPart? Reactant(string formula) => Named(Reactants, formula);

    /// <summary>The product of this formula, or null.</summary>
    public ReactionPart? Product(string formula) => Named(Products, formula);

    /// <summary>Grams of one substance for each gram of another when the reaction is complete: 1.658 for MgO and Mg.</summary>
    /// <exception cref="ArgumentNullException">An argument is null.</exception>
    public static UncertainValue MassRatio(ReactionPart of, ReactionPart perGramOf)
    {
        ArgumentNullException.ThrowIfNull(of);
        ArgumentNullException.ThrowIfNull(perGramOf);
        return of.GramsPerMoleOfReaction / perGramOf.GramsPerMoleOfReaction;
    }

    private static ReactionPart? Named(IReadOnlyList<ReactionPart> parts, string formula) =>
        parts.FirstOrDefault(part => part.Formula == formula);

    private static ReactionPart[] Side(IReadOnlyList<ReactionPart> parts, string name)
    {
        ArgumentNullException.ThrowIfNull(parts, name);
        if (parts.Count == 0 || parts.DistinctBy(part => part.Formula).Count() != parts.Count)
        {
            throw new ArgumentException("A side of a reaction has at least one substance and names each once.", name);
        }

        return [.. parts];
    }
}
