using Calx.Measurement.Uncertainty;

namespace Calx.Chemistry.Amounts;

/// <summary>The greatest mass of a product that the masses put in can give.</summary>
public static class TheoreticalYield
{
    /// <summary>
    /// The yield when the limiting reagent, judged by the estimates, is all used up. Where reagents tie, the first of
    /// them is reckoned with.
    /// </summary>
    /// <param name="reaction">The balanced reaction.</param>
    /// <param name="reagents">The reactants with the masses put in.</param>
    /// <param name="product">The product's formula.</param>
    public static TheoreticalYieldResult Of(Reaction reaction, IReadOnlyList<WeighedReagent> reagents, string product)
    {
        ArgumentNullException.ThrowIfNull(reaction);
        if (reaction.Product(product) is not { } made)
        {
            return new TheoreticalYieldResult.CannotTell($"{product} is not made in this reaction");
        }

        LimitingReagentResult found = LimitingReagent.Find(reaction, reagents);
        return found switch
        {
            LimitingReagentResult.Found one => Yield(one.Limiting, made, found),
            LimitingReagentResult.Tie tie => Yield(tie.Limiting[0], made, found),
            LimitingReagentResult.CannotTell nothing => new TheoreticalYieldResult.CannotTell(nothing.Reason),
            _ => throw new InvalidOperationException("An unknown case of a closed result."),
        };
    }

    private static TheoreticalYieldResult.Found Yield(
        ReagentExtent limiting, ReactionPart product, LimitingReagentResult basis) =>
        new(limiting.Extent * product.GramsPerMoleOfReaction, basis);
}
