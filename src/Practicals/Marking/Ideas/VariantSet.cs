using Calx.Measurement.Expressions;

namespace Calx.Practicals.Marking.Ideas;

/// <summary>All formulas that one answer may have been worked out by wrongly: each known idea by itself, and in pairs.</summary>
internal sealed class VariantSet
{
    /// <summary>Two ideas at once are rarer than their rates say: most students have one. Judgement, no source.</summary>
    private const double BothAtOnce = 0.5;

    /// <summary>A rarer pair is not worth its chance matches.</summary>
    private const double RarestPair = 2e-6;

    /// <summary>Bounds memory and time whatever a practical's file asks for; the longest formula of those built in has some 4,000.</summary>
    private const int Most = 20_000;

    private VariantSet(Expression right, int rightPlace, IReadOnlyList<Variant> variants, VariantProgram program) =>
        (Right, RightPlace, Variants, Program) = (right, rightPlace, variants, program);

    /// <summary>The right formula.</summary>
    public Expression Right { get; }

    /// <summary>Where its value stands in the program.</summary>
    public int RightPlace { get; }

    /// <summary>The changed ones, the most usual first.</summary>
    public IReadOnlyList<Variant> Variants { get; }

    /// <summary>Works all of them out.</summary>
    public VariantProgram Program { get; }

    /// <summary>Makes them.</summary>
    /// <param name="right">The right formula.</param>
    /// <param name="facts">What else of the practical there is to take by mistake.</param>
    /// <param name="pairs">Whether two ideas at once are looked for.</param>
    public static VariantSet Of(Expression right, MarkingFacts facts, bool pairs = true)
    {
        var builder = new VariantProgram.Builder();
        int place = builder.Add(right);
        Single[] singles = [.. Singles(right, facts)];
        List<Variant> variants = [.. singles.Select(s => new Variant(s.Mutation.Tree, s.Mutation.Rounding, [s.Mutation.Idea], s.Prior, builder.Add(s.Mutation.Tree, s.Mutation.Rounding)))];
        if (pairs)
        {
            variants.AddRange(Pairs(right, singles, facts).Select(p =>
                new Variant(p.Mutation.Tree, p.Mutation.Rounding, p.Ideas, p.Prior, builder.Add(p.Mutation.Tree, p.Mutation.Rounding))));
        }

        return new VariantSet(right, place, [.. variants.OrderByDescending(v => v.Prior)], builder.Build());
    }

    private static IEnumerable<Single> Singles(Expression tree, MarkingFacts facts)
    {
        Mutation[] all =
        [
            .. OrderMutations.Of(tree, facts), .. MolarMassMutations.Of(tree, facts), .. MassMutations.Of(tree, facts), .. NumberMutations.Of(tree),
        ];
        // An idea that has more places to act at is not for that more usual.
        return all.Where(m => m.Rounding is not null || !m.Tree.Equals(tree)).Distinct().GroupBy(m => m.Idea)
            .SelectMany(of => of.Select(m => new Single(m, of.Key.Rate / of.Count())));
    }

    private static IEnumerable<Pair> Pairs(Expression right, IReadOnlyList<Single> singles, MarkingFacts facts)
    {
        HashSet<Expression> alone = [right, .. singles.Where(s => s.Mutation.Rounding is null).Select(s => s.Mutation.Tree)];
        return singles.Where(first => first.Mutation.Rounding is null)
            .SelectMany(first => Singles(first.Mutation.Tree, facts).Select(second =>
                new Pair(second.Mutation, [first.Mutation.Idea, second.Mutation.Idea], BothAtOnce * first.Prior * second.Prior)))
            .Where(p => p.Prior >= RarestPair && (p.Mutation.Rounding is not null || !alone.Contains(p.Mutation.Tree)))
            .GroupBy(p => (p.Mutation.Tree, p.Mutation.Rounding is { } r ? (r.Digits, r.IsFigures, r.Nodes.Count) : default))
            .Select(same => same.MaxBy(p => p.Prior)!)
            .OrderByDescending(p => p.Prior)
            .Take(Most);
    }

    private sealed record Single(Mutation Mutation, double Prior);

    private sealed record Pair(Mutation Mutation, IReadOnlyList<Idea> Ideas, double Prior);
}
