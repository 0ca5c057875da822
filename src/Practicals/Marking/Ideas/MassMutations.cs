using Calx.Measurement.Expressions;

namespace Calx.Practicals.Marking.Ideas;

/// <summary>The mass of something else, a weighing of another time, another whole.</summary>
internal static class MassMutations
{
    public static IEnumerable<Mutation> Of(Expression tree, MarkingFacts facts) =>
    [
        .. tree.Nodes.Where(facts.IsDifference).SelectMany(node => OtherMass(tree, node, facts)),
        .. tree.Nodes.OfType<NameTerm>().SelectMany(node => OtherAnswer(tree, node, facts)),
        .. OtherReadings(tree, facts),
        .. tree.Nodes.OfType<BinaryOperation>().Where(n => n.Operator == Operator.Divide).SelectMany(quotient => OtherWhole(tree, quotient)),
        .. tree.Names.Where(facts.Readings.ContainsKey).Where(name => facts.Readings[name].Repeats > 1).Select(name =>
            new Mutation(tree.Substitute(name, new NameTerm(MarkingFacts.Earlier(name))), KnownIdeas.EarlierWeighing)),
        .. tree.Nodes.Where(facts.IsDifference).Where(node => IsTemperature((BinaryOperation)node, facts)).Select(node =>
            new Mutation(tree.Replace(node, new BinaryOperation(Operator.Add, node, new NumberTerm(273))), KnownIdeas.KelvinAdded)),
        .. WarmedMasses(tree, facts),
        .. tree.Nodes.OfType<Negation>().Select(node => new Mutation(tree.Replace(node, node.Operand), KnownIdeas.SignLost)),
    ];

    /// <summary>m c dT with the mass of what burnt in place of that of what was warmed.</summary>
    private static IEnumerable<Mutation> WarmedMasses(Expression tree, MarkingFacts facts) =>
        from warmed in tree.Nodes.OfType<NameTerm>()
        where facts.Readings.ContainsKey(warmed.Name) && facts.Readings[warmed.Name].Unit is "cm³" or "dm³"
        from other in facts.Differences.Where(d => Unit(d, facts) == "g")
        select new Mutation(tree.Replace(warmed, other), KnownIdeas.WrongMass);

    private static IEnumerable<Mutation> OtherMass(Expression tree, Expression node, MarkingFacts facts)
    {
        string unit = Unit(node, facts);
        Idea idea = IdeaOf(tree, node);
        IEnumerable<Expression> others = facts.Differences.Where(d => !d.Equals(node) && Unit(d, facts) == unit);
        // A whole that is a weighing with its vessel is a wrong whole as well as a vessel that was not taken away.
        return (idea == KnownIdeas.WrongDenominator ? others.Append(((BinaryOperation)node).Left) : others).Select(other => new Mutation(tree.Replace(node, other), idea));
    }

    /// <summary>An earlier answer of the same unit, or a mass that nobody asked for.</summary>
    private static IEnumerable<Mutation> OtherAnswer(Expression tree, NameTerm node, MarkingFacts facts)
    {
        if (facts.Answers.FirstOrDefault(a => a.Id == node.Name) is not { } answer)
        {
            return [];
        }

        Idea idea = IdeaOf(tree, node);
        IEnumerable<Expression> others =
        [
            .. facts.Answers.TakeWhile(a => !tree.Equals(a.Formula)).Where(a => a != answer && a.Unit == answer.Unit).Select(a => new NameTerm(a.Id)),
            .. facts.Differences.Where(d => Unit(d, facts) == answer.Unit && facts.Answers.All(a => !a.Formula.Equals(d))),
        ];
        return others.Select(other => new Mutation(tree.Replace(node, other), idea));
    }

    /// <summary>A reading that stands alone, not in a difference, taken for another that does in the practical: the fuel's mass for the water's.</summary>
    private static IEnumerable<Mutation> OtherReadings(Expression tree, MarkingFacts facts)
    {
        HashSet<Expression> within = [.. tree.Nodes.Where(facts.IsDifference).Cast<BinaryOperation>().SelectMany(d => new[] { d.Left, d.Right })];
        HashSet<string> subtracted = [.. facts.Differences.SelectMany(d => d.Names), .. within.SelectMany(w => w.Names)];
        return
            from node in tree.Nodes.OfType<NameTerm>()
            where facts.Readings.ContainsKey(node.Name) && !subtracted.Contains(node.Name)
            from other in facts.Readings
            where other.Key != node.Name && !subtracted.Contains(other.Key) && other.Value.Unit == facts.Readings[node.Name].Unit
            select new Mutation(tree.Replace(node, new NameTerm(other.Key)), IdeaOf(tree, node));
    }

    /// <summary>Below the line of a share it is the whole that is wrong; a share is a quotient of masses, or a percentage as a whole.</summary>
    private static Idea IdeaOf(Expression tree, Expression node)
    {
        bool isPercentage = tree.Nodes.OfType<NumberTerm>().Any(n => n.Value == 100);
        return tree.Nodes.OfType<BinaryOperation>().Any(n => n.Operator == Operator.Divide && ReferenceEquals(n.Right, node)
                && (n.Left.MolarMasses.Count == 0 || (isPercentage && ReferenceEquals(n, tree))))
            ? KnownIdeas.WrongDenominator
            : KnownIdeas.WrongMass;
    }

    /// <summary>A share of one part instead of the whole that is made of both; or a deviation taken as a share of the value found, instead of the accepted
    /// one: the difference above is made of both.</summary>
    private static IEnumerable<Mutation> OtherWhole(Expression tree, BinaryOperation quotient)
    {
        if (quotient.Right is BinaryOperation { Operator: Operator.Add } whole)
        {
            yield return new Mutation(tree.Replace(whole, whole.Left), KnownIdeas.WrongDenominator);
            yield return new Mutation(tree.Replace(whole, whole.Right), KnownIdeas.WrongDenominator);
        }

        BinaryOperation? deviation = quotient.Left.Nodes.OfType<BinaryOperation>()
            .FirstOrDefault(n => n.Operator == Operator.Subtract && (n.Left.Equals(quotient.Right) || n.Right.Equals(quotient.Right)));
        if (deviation is not null)
        {
            Expression other = deviation.Left.Equals(quotient.Right) ? deviation.Right : deviation.Left;
            yield return new Mutation(tree.Replace(quotient.Right, other), KnownIdeas.WrongDenominator);
        }
    }

    private static bool IsTemperature(BinaryOperation difference, MarkingFacts facts) => Unit(difference, facts) is "°C" or "K";

    private static string Unit(Expression difference, MarkingFacts facts) => facts.Readings[difference.Names[0]].Unit;
}
