using Calx.Measurement.Expressions;

namespace Calx.Practicals.Marking.Ideas;

/// <summary>Numbers of the equation, powers of ten, units, and rounding on the way.</summary>
internal static class NumberMutations
{
    private static readonly double[] PowersOfTen = [0.01, 0.1, 10, 100];
    private static readonly double[] Units = [0.001, 1000, 60, 1.0 / 60];
    private static readonly int[] Digits = [1, 2, 3];

    public static IEnumerable<Mutation> Of(Expression tree) => [.. Coefficients(tree), .. Scales(tree), .. Roundings(tree)];

    private static IEnumerable<Mutation> Coefficients(Expression tree)
    {
        // One substance by itself has no coefficient to mistake.
        if (tree.MolarMasses.Count > 1)
        {
            yield return new Mutation(Times(2, tree), KnownIdeas.CoefficientMisplaced);
            yield return new Mutation(Times(0.5, tree), KnownIdeas.CoefficientMisplaced);
            yield return new Mutation(Times(1.5, tree), KnownIdeas.OtherCharge);
            yield return new Mutation(Times(2.0 / 3, tree), KnownIdeas.OtherCharge);
        }

        foreach (NumberTerm number in tree.Nodes.OfType<NumberTerm>().Where(n => n.Value is > 1 and < 20))
        {
            yield return new Mutation(tree.Replace(number, new NumberTerm(1)), KnownIdeas.CoefficientIgnored);
        }
    }

    private static IEnumerable<Mutation> Scales(Expression tree) =>
    [
        .. PowersOfTen.Select(by => new Mutation(Times(by, tree), KnownIdeas.PowerOfTen)),
        .. Units.Select(by => new Mutation(Times(by, tree), KnownIdeas.UnitSlip)),
    ];

    /// <summary>All mole steps to the same digits, or all differences, or all quotients below the last; and the answer to a whole number.</summary>
    private static IEnumerable<Mutation> Roundings(Expression tree)
    {
        Expression[][] parts =
        [
            [.. tree.Nodes.Where(n => !ReferenceEquals(n, tree) && MarkingFacts.IsMoleStep(n))],
            [.. tree.Nodes.Where(n => !ReferenceEquals(n, tree) && n is BinaryOperation { Operator: Operator.Subtract })],
            [.. tree.Nodes.Where(n => !ReferenceEquals(n, tree) && n is BinaryOperation { Operator: Operator.Divide } && !MarkingFacts.IsMoleStep(n))],
        ];
        foreach (Expression[] nodes in parts.Where(p => p.Length > 0))
        {
            foreach (int digits in Digits)
            {
                yield return new Mutation(tree, KnownIdeas.RoundedEarly, new Rounding(nodes, digits, IsFigures: false));
                yield return new Mutation(tree, KnownIdeas.RoundedEarly, new Rounding(nodes, digits, IsFigures: true));
            }
        }

        yield return new Mutation(tree, KnownIdeas.RoundedToWhole, new Rounding([tree], 0, IsFigures: false));
    }

    private static BinaryOperation Times(double by, Expression tree) => by < 1
        ? new BinaryOperation(Operator.Divide, tree, new NumberTerm(1 / by))
        : new BinaryOperation(Operator.Multiply, tree, new NumberTerm(by));
}
