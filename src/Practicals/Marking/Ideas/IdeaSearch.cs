using Calx.Measurement.Distributions;
using Calx.Measurement.Expressions;
using Calx.Practicals.Marking.Written;

namespace Calx.Practicals.Marking.Ideas;

/// <summary>Looks for the ideas that reproduce a wrong value within its own rounding.</summary>
/// <param name="variants">The formulas to try.</param>
/// <param name="facts">The practical.</param>
internal sealed class IdeaSearch(VariantSet variants, MarkingFacts facts)
{
    /// <summary>Prior weight of 'something else', beside the rates of the ideas. Judgement.</summary>
    private const double SomethingElse = 0.3;

    /// <summary>A number of unknown origin lies about the right one by this many powers of e. Judgement.</summary>
    private const double Spread = 1.5;

    /// <summary>Values on the way that were not written are taken as rounded to three figures at the least: two of them move an answer so far.</summary>
    private const double UnseenRounding = 0.006;

    /// <summary>Of those who round on the way; the rest keep the calculator's digits.</summary>
    private const double RoundsUnseen = 0.25;

    /// <summary>Of those who come to a value with digits, so many write it down with next to none. Judgement.</summary>
    private const double RoundsFar = 0.05;

    /// <summary>Looks.</summary>
    /// <param name="given">The wrong value.</param>
    /// <param name="names">Values at hand; not a number where there is none.</param>
    /// <param name="molarMasses">Molar masses by each set of atomic weights that may be used.</param>
    public IdeaFindings Of(AnswerText.Number given, Func<string, double> names, IReadOnlyList<Func<string, double>> molarMasses) =>
        IdeaFindings.Of(Weigh(given, names, molarMasses, 1), Unexplained(given, names, molarMasses[0]), found => TellApart(found, names, molarMasses[0]));

    /// <summary>Everything that reproduces the value, with its weight; the weights of several searches may be put together.</summary>
    /// <param name="given">The wrong value.</param>
    /// <param name="names">Values at hand; not a number where there is none.</param>
    /// <param name="molarMasses">Molar masses by each set of atomic weights that may be used.</param>
    /// <param name="share">How probable it is that the student worked this way at all.</param>
    public IReadOnlyList<WeighedIdea> Weigh(
        AnswerText.Number given, Func<string, double> names, IReadOnlyList<Func<string, double>> molarMasses, double share)
    {
        double[][] values = [.. molarMasses.Select(m => Values(names, m))];
        double middle = Math.Abs(values[0][variants.RightPlace]);
        var weights = new Dictionary<string, WeighedIdea>(StringComparer.Ordinal);
        double chance = 0;
        foreach (Variant variant in variants.Variants)
        {
            chance += Random(values[0][variant.Place], given.HalfWidth, middle);
            double fit = values.Max(v => Fit(given, v[variant.Place], variant));
            if (fit > 0)
            {
                string key = WeighedIdea.KeyOf(variant.Ideas);
                WeighedIdea found = weights.GetValueOrDefault(key)
                    ?? new WeighedIdea(variant.Ideas, variant.Formula, values[0][variant.Place], 0, Math.Min(1, chance), variant.Tree);
                weights[key] = found with { Weight = found.Weight + (variant.Prior * fit * share) };
            }
        }

        return [.. weights.Values];
    }

    /// <summary>The weight of 'something else'.</summary>
    public double Unexplained(AnswerText.Number given, Func<string, double> names, Func<string, double> molarMass) =>
        SomethingElse * Random(given.Value, given.HalfWidth, Math.Abs(Values(names, molarMass)[variants.RightPlace]));

    private double[] Values(Func<string, double> names, Func<string, double> molarMass)
    {
        double[] values = new double[variants.Program.Count];
        variants.Program.Run(names, molarMass, values);
        return values;
    }

    private static double Fit(AnswerText.Number given, double value, Variant variant)
    {
        if (!double.IsFinite(value))
        {
            return 0;
        }

        if (given.CouldBe(value))
        {
            bool stands = !given.IsCoarse || Math.Abs(value - given.Value) <= UnseenRounding * Math.Abs(value) || variant.Ideas.Any(i => i.IsRounding);
            return stands ? 1 : RoundsFar;
        }

        bool near = Math.Abs(value - given.Value) <= given.HalfWidth + (UnseenRounding * Math.Abs(value));
        return near && variant.Tree.Children.Any(c => c.MolarMasses.Count > 0) ? RoundsUnseen : 0;
    }

    /// <summary>The probability that a number of unknown origin lands within so much of a value.</summary>
    private static double Random(double value, double halfWidth, double middle)
    {
        double size = Math.Abs(value);
        if (!double.IsFinite(size) || size == 0 || middle == 0 || !double.IsFinite(middle))
        {
            return 0;
        }

        double low = Math.Log(Math.Max(size - halfWidth, size * 1e-3) / middle) / Spread, high = Math.Log((size + Math.Max(halfWidth, size * 5e-4)) / middle) / Spread;
        return StandardNormal.Cumulative(high) - StandardNormal.Cumulative(low);
    }

    /// <summary>The first earlier answer that two candidates come to with different values, or null.</summary>
    /// <param name="found">The two, by their formulas.</param>
    /// <param name="names">Values at hand.</param>
    /// <param name="molarMass">Molar masses.</param>
    public string? TellApart((Expression One, Expression Other) found, Func<string, double> names, Func<string, double> molarMass)
    {
        const double Differs = 0.005;
        return facts.Answers.FirstOrDefault(answer =>
        {
            Expression right = facts.Expanded(answer.Formula);
            double? one = Intermediate(found.One, right, names, molarMass), other = Intermediate(found.Other, right, names, molarMass);
            return one is double a && other is double b && Math.Abs(a - b) > Differs * Math.Max(Math.Abs(a), Math.Abs(b));
        })?.Id;
    }

    /// <summary>What somebody with this formula has for an earlier answer: its right value where the formula still holds the right working, else what stands in its place.</summary>
    private double? Intermediate(Expression changed, Expression part, Func<string, double> names, Func<string, double> molarMass)
    {
        Expression? at = changed.Nodes.Contains(part) ? part : Path(variants.Right, part) is { } path ? Follow(changed, path) : null;
        if (at is null || ReferenceEquals(at, changed))
        {
            return null;
        }

        try
        {
            return at.Evaluate(names, molarMass);
        }
        catch (Measurement.Uncertainty.UndefinedResultException)
        {
            return null;
        }
    }

    private static IReadOnlyList<int>? Path(Expression tree, Expression part)
    {
        if (tree.Equals(part))
        {
            return [];
        }

        for (int i = 0; i < tree.Children.Count; i++)
        {
            if (Path(tree.Children[i], part) is { } below)
            {
                return [i, .. below];
            }
        }

        return null;
    }

    private static Expression? Follow(Expression tree, IEnumerable<int> path)
    {
        foreach (int child in path)
        {
            if (child >= tree.Children.Count)
            {
                return null;
            }

            tree = tree.Children[child];
        }

        return tree;
    }
}
