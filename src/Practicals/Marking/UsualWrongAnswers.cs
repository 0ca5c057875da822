using Calx.Chemistry.Elements;
using Calx.Chemistry.Formulas;
using Calx.Measurement.Expressions;
using Calx.Practicals.Definition;
using Calx.Practicals.Marking.Ideas;

namespace Calx.Practicals.Marking;

/// <summary>The wrong values to be ready for: what the known ideas, one at a time, make of given readings.</summary>
public static class UsualWrongAnswers
{
    /// <summary>Values closer than this share of themselves cannot be told apart on paper.</summary>
    private const double Alike = 0.005;

    /// <summary>Works them out for every answer that the readings give. An answer that uses earlier ones is taken with these right; the last
    /// one is also looked at from the readings on, since students come to it without writing every step down.</summary>
    /// <param name="practical">The practical.</param>
    /// <param name="readings">Readings by id; of a repeated one the last.</param>
    /// <param name="weights">Atomic weights for the molar masses.</param>
    /// <param name="most">How many for each answer at most.</param>
    /// <returns>In the order of the answers, for each the most usual first.</returns>
    public static IReadOnlyList<UsualWrongAnswer> Of(Practical practical, IReadOnlyDictionary<string, double> readings, AtomicWeights weights, int most = 3)
    {
        ArgumentNullException.ThrowIfNull(practical);
        ArgumentNullException.ThrowIfNull(readings);
        ArgumentNullException.ThrowIfNull(weights);
        var facts = new MarkingFacts(practical);
        var molarMasses = new MolarMasses(weights);
        var known = new Dictionary<string, double>(readings, StringComparer.Ordinal);
        List<UsualWrongAnswer> all = [];
        foreach (AnswerDefinition answer in practical.Answers)
        {
            bool isLast = practical.Answers.All(a => !a.Formula.Names.Contains(answer.Id));
            Expression tree = isLast ? facts.Expanded(answer.Formula) : answer.Formula;
            if (!tree.Names.All(known.ContainsKey))
            {
                continue;
            }

            VariantSet variants = VariantSet.Of(tree, facts, pairs: false);
            double[] values = new double[variants.Program.Count];
            variants.Program.Run(name => known.GetValueOrDefault(name, double.NaN), molarMasses.Of, values);
            double right = values[variants.RightPlace];
            known[answer.Id] = right;
            if (double.IsFinite(right))
            {
                all.AddRange(Together(answer, variants, values, right).Take(most));
            }
        }

        return all;
    }

    /// <summary>The answer that the others lead up to: of those that no other uses the one with most molar masses in its working, the first of equals.</summary>
    /// <returns>Null for a practical without answers.</returns>
    public static AnswerDefinition? Main(Practical practical)
    {
        ArgumentNullException.ThrowIfNull(practical);
        var facts = new MarkingFacts(practical);
        return practical.Answers.Where(answer => practical.Answers.All(a => !a.Formula.Names.Contains(answer.Id)))
            .MaxBy(answer => facts.Expanded(answer.Formula).MolarMasses.Count);
    }

    private static IEnumerable<UsualWrongAnswer> Together(AnswerDefinition answer, VariantSet variants, double[] values, double right)
    {
        List<List<Variant>> alike = [];
        foreach (Variant variant in variants.Variants.Where(v => IsWorthShowing(values[v.Place], right)))
        {
            List<Variant>? same = alike.Find(g => Same(values[g[0].Place], values[variant.Place]));
            if (same is null)
            {
                alike.Add([variant]);
            }
            else
            {
                same.Add(variant);
            }
        }

        return alike.OrderByDescending(g => g.Sum(v => v.Prior))
            .Select(g => new UsualWrongAnswer(answer, values[g[0].Place], [.. g.SelectMany(v => v.Ideas).Distinct()]));
    }

    /// <summary>A number out of all proportion, or with the wrong sign, is noticed without a list, and a slip of the decimal point needs no explanation.</summary>
    private static bool IsWorthShowing(double value, double right)
    {
        const double Beyond = 1000;
        double ratio = value / right;
        return double.IsFinite(ratio) && ratio is > 1 / Beyond and < Beyond && !Same(value, right)
            && Math.Abs(Math.Log10(ratio) - Math.Round(Math.Log10(ratio))) > 1e-9;
    }

    private static bool Same(double one, double other) => Math.Abs(one - other) <= Alike * Math.Max(Math.Abs(one), Math.Abs(other));
}
