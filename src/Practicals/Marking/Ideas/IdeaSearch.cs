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

    private const int MostCandidates = 6;
    private const double LeastProbability = 0.01;

    /// <summary>Looks.</summary>
    /// <param name="given">The wrong value.</param>
    /// <param name="names">Values at hand; not a number where there is none.</param>
    /// <param name="molarMasses">Molar masses by each set of atomic weights that may be used.</param>
    public IdeaFindings Of(AnswerText.Number given, Func<string, double> names, IReadOnlyList<Func<string, double>> molarMasses)
    {
        double[][] values = [.. molarMasses.Select(m => Values(names, m))];
        double middle = Math.Abs(values[0][variants.RightPlace]);
        var weights = new Dictionary<string, Found>(StringComparer.Ordinal);
        double chance = 0;
        foreach (Variant variant in variants.Variants)
        {
            chance += Random(values[0][variant.Place], given.HalfWidth, middle);
            double fit = values.Max(v => Fit(given, v[variant.Place], variant.Tree));
            if (fit > 0)
            {
                string key = string.Join('+', variant.Ideas.Select(i => i.Id).Order(StringComparer.Ordinal));
                Found found = weights.GetValueOrDefault(key) ?? new Found(variant, values[0][variant.Place], Math.Min(1, chance));
                weights[key] = found with { Weight = found.Weight + (variant.Prior * fit) };
            }
        }

        double other = SomethingElse * Random(given.Value, given.HalfWidth, middle);
        double whole = other + weights.Values.Sum(f => f.Weight);
        Found[] first = [.. weights.Values.OrderByDescending(f => f.Weight).Where(f => f.Weight >= LeastProbability * whole).Take(MostCandidates)];
        return new IdeaFindings(
            [.. first.Select(f => new IdeaCandidate(f.First.Ideas, f.First.Formula, f.Value, f.Weight / whole, f.Chance))],
            whole == 0 ? 1 : other / whole,
            TellApart(first, whole, names, molarMasses[0]));
    }

    private double[] Values(Func<string, double> names, Func<string, double> molarMass)
    {
        double[] values = new double[variants.Program.Count];
        variants.Program.Run(names, molarMass, values);
        return values;
    }

    private static double Fit(AnswerText.Number given, double value, Expression tree)
    {
        if (!double.IsFinite(value))
        {
            return 0;
        }

        if (given.CouldBe(value))
        {
            return 1;
        }

        bool near = Math.Abs(value - given.Value) <= given.HalfWidth + (UnseenRounding * Math.Abs(value));
        return near && tree.Children.Any(c => c.MolarMasses.Count > 0) ? RoundsUnseen : 0;
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

    /// <summary>The first earlier answer that the two leading candidates, where both may well be, come to with different values.</summary>
    private string? TellApart(IReadOnlyList<Found> first, double whole, Func<string, double> names, Func<string, double> molarMass)
    {
        const double MayWellBe = 0.1;
        const double Differs = 0.005;
        if (first.Count < 2 || first[1].Weight < MayWellBe * whole)
        {
            return null;
        }

        return facts.Answers.FirstOrDefault(answer =>
        {
            Expression right = facts.Expanded(answer.Formula);
            double? one = Intermediate(first[0].First.Tree, right, names, molarMass), other = Intermediate(first[1].First.Tree, right, names, molarMass);
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

    private sealed record Found(Variant First, double Value, double Chance, double Weight = 0);
}
