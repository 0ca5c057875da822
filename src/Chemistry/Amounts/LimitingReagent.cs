using System.Globalization;
using Calx.Measurement.Uncertainty;

namespace Calx.Chemistry.Amounts;

/// <summary>The limiting reagent of a reaction.</summary>
public static class LimitingReagent
{
    /// <summary>Most reagents weighed against each other.</summary>
    public const int MostReagents = 8;

    // Two extents that differ by less than rounding can make are the same.
    private const double SameRelative = 1e-12;

    /// <summary>Finds the reagent that is used up first.</summary>
    /// <param name="reaction">The balanced reaction.</param>
    /// <param name="reagents">One to eight reactants with the masses put in; the others are taken to be in excess.</param>
    public static LimitingReagentResult Find(Reaction reaction, IReadOnlyList<WeighedReagent> reagents)
    {
        ArgumentNullException.ThrowIfNull(reaction);
        ArgumentNullException.ThrowIfNull(reagents);
        if (Fault(reaction, reagents) is { } reason)
        {
            return new LimitingReagentResult.CannotTell(reason);
        }

        ReactionPart[] parts = [.. reagents.Select(reagent => reaction.Reactant(reagent.Formula)!)];
        UncertainValue[] extents = [.. reagents.Select((reagent, i) => reagent.MassInGrams / parts[i].GramsPerMoleOfReaction)];
        int first = Enumerable.Range(0, extents.Length).MinBy(i => extents[i].Value);
        double[] probabilities = LimitingProbability.Of(extents);
        ReagentExtent[] found = [.. reagents.Select((reagent, i) => new ReagentExtent(
            reagent.Formula,
            parts[i].Number * extents[i],
            extents[i],
            probabilities[i],
            (extents[i] - extents[first]) * parts[i].GramsPerMoleOfReaction))];
        ReagentExtent[] limiting = [.. found.Where(one => IsSame(one.Extent.Value, extents[first].Value))];
        return limiting.Length > 1
            ? new LimitingReagentResult.Tie(limiting, found)
            : new LimitingReagentResult.Found(limiting[0], found);
    }

    private static bool IsSame(double extent, double least) => extent - least <= SameRelative * Math.Abs(least);

    private static string? Fault(Reaction reaction, IReadOnlyList<WeighedReagent> reagents)
    {
        if (reagents.Count is < 1 or > MostReagents)
        {
            return string.Create(CultureInfo.InvariantCulture, $"masses of one to {MostReagents} reagents are needed");
        }

        if (reagents.FirstOrDefault(reagent => reaction.Reactant(reagent.Formula) is null) is { } stranger)
        {
            return $"{stranger.Formula} is not used up in this reaction";
        }

        if (reagents.GroupBy(reagent => reagent.Formula).FirstOrDefault(group => group.Count() > 1) is { } twice)
        {
            return $"{twice.Key} is given more than once";
        }

        return reagents.FirstOrDefault(reagent => reagent.MassInGrams.Value < 0) is { } negative
            ? $"the mass of {negative.Formula} is negative"
            : null;
    }
}
