using Calx.Measurement.Expressions;

namespace Calx.Practicals.Marking.Ideas;

/// <summary>Steps in the wrong order, of the wrong kind, or left out.</summary>
internal static class OrderMutations
{
    public static IEnumerable<Mutation> Of(Expression tree, MarkingFacts facts) =>
        tree.Nodes.SelectMany(node => Changed(node, facts).Select(c => new Mutation(tree.Replace(node, c.By), c.Idea)));

    private static IEnumerable<(Expression By, Idea Idea)> Changed(Expression node, MarkingFacts facts) => node switch
    {
        BinaryOperation { Operator: Operator.Subtract } difference => OfDifference(difference, facts),
        BinaryOperation { Operator: Operator.Divide } quotient => OfQuotient(quotient),
        BinaryOperation { Operator: Operator.Multiply } product => OfProduct(product),
        FunctionCall { Function: Function.Min or Function.Max } choice => choice.Arguments.Select(a => (a, KnownIdeas.LimitingIgnored)),
        _ => [],
    };

    private static IEnumerable<(Expression, Idea)> OfDifference(BinaryOperation difference, MarkingFacts facts)
    {
        yield return (new BinaryOperation(Operator.Subtract, difference.Right, difference.Left), KnownIdeas.SubtractedBackwards);
        yield return (difference.Left, facts.IsDifference(difference) ? KnownIdeas.VesselNotSubtracted : KnownIdeas.LeftOut);
    }

    private static IEnumerable<(Expression, Idea)> OfQuotient(BinaryOperation quotient)
    {
        bool isMoles = MarkingFacts.IsMoleStep(quotient);
        yield return (UpsideDown(quotient), isMoles ? KnownIdeas.MolarMassOverMass : KnownIdeas.Inverted);
        yield return (new BinaryOperation(Operator.Multiply, quotient.Left, quotient.Right), KnownIdeas.MultipliedForDivided);
        yield return (quotient.Left, KnownIdeas.LeftOut);
    }

    /// <summary>The 100 of a percentage stays above.</summary>
    private static BinaryOperation UpsideDown(BinaryOperation quotient) =>
        quotient.Left is BinaryOperation { Operator: Operator.Multiply, Left: NumberTerm hundred, Right: var above }
            ? new BinaryOperation(Operator.Divide, new BinaryOperation(Operator.Multiply, hundred, quotient.Right), above)
            : new BinaryOperation(Operator.Divide, quotient.Right, quotient.Left);

    private static IEnumerable<(Expression, Idea)> OfProduct(BinaryOperation product)
    {
        yield return (new BinaryOperation(Operator.Divide, product.Left, product.Right), KnownIdeas.DividedForMultiplied);
        yield return (new BinaryOperation(Operator.Divide, product.Right, product.Left), KnownIdeas.DividedForMultiplied);
        yield return (product.Left, KnownIdeas.LeftOut);
        yield return (product.Right, KnownIdeas.LeftOut);
    }
}
