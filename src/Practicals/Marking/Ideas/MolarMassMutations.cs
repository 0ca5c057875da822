using Calx.Measurement.Expressions;

namespace Calx.Practicals.Marking.Ideas;

/// <summary>Molar masses of something else, exchanged, or used the wrong way round, one at a time and throughout.</summary>
internal static class MolarMassMutations
{
    /// <summary>Litres a mole of gas takes at room conditions, and at 0 °C and 1 atm, as school tables have them.</summary>
    private static readonly double[] GasVolumes = [24, 22.4];

    public static IEnumerable<Mutation> Of(Expression tree, MarkingFacts facts)
    {
        MolarMassTerm[] all = [.. tree.Nodes.OfType<MolarMassTerm>()];
        if (all.Length == 0)
        {
            return [];
        }

        return
        [
            .. Throughout(tree, facts),
            .. all.SelectMany(term => Instead(term, facts).Concat(all.Length == 1 ? InOneStep(term, facts) : []).Select(c => new Mutation(tree.Replace(term, c.By), c.Idea))),
            .. tree.Nodes.Where(MarkingFacts.IsMoleStep).Cast<BinaryOperation>().SelectMany(step => AsGas(tree, step)),
        ];
    }

    private static IEnumerable<Mutation> Throughout(Expression tree, MarkingFacts facts)
    {
        string[] formulas = [.. tree.MolarMasses];
        if (formulas.Length < 2)
        {
            yield break;
        }

        Expression masses = EachStep(tree, step => step.Left), alone = masses.Rewrite(WithoutFactor);
        yield return new Mutation(masses, KnownIdeas.MolesSkipped);
        if (!alone.Equals(masses))
        {
            yield return new Mutation(alone, KnownIdeas.MolesSkipped);
        }

        yield return new Mutation(EachStep(tree, step => new BinaryOperation(Operator.Divide, step.Right, step.Left)), KnownIdeas.MolarMassOverMass);
        yield return new Mutation(EachStep(tree, step => new BinaryOperation(Operator.Multiply, step.Left, step.Right)), KnownIdeas.MultipliedForDivided);
        yield return new Mutation(EachMass(tree, term => SubstanceFacts.ByAtomicNumbers(term.Formula) is double sum ? new NumberTerm(sum) : term), KnownIdeas.AtomicNumber);
        foreach (string formula in facts.Formulas)
        {
            yield return new Mutation(EachMass(tree, _ => new MolarMassTerm(formula)), KnownIdeas.OneMolarMass);
        }

        for (int i = 0; i < formulas.Length; i++)
        {
            for (int j = i + 1; j < formulas.Length; j++)
            {
                (string one, string other) = (formulas[i], formulas[j]);
                yield return new Mutation(
                    EachMass(tree, term => term.Formula == one ? new MolarMassTerm(other) : term.Formula == other ? new MolarMassTerm(one) : term),
                    KnownIdeas.MolarMassesSwapped);
            }
        }
    }

    private static IEnumerable<(Expression By, Idea Idea)> Instead(MolarMassTerm term, MarkingFacts facts)
    {
        if (SubstanceFacts.ByAtomicNumbers(term.Formula) is double sum)
        {
            yield return (new NumberTerm(sum), KnownIdeas.AtomicNumber);
        }

        string? molecule = SubstanceFacts.MoleculeOf(term.Formula), atom = SubstanceFacts.AtomOf(term.Formula);
        if (molecule is not null)
        {
            yield return (new MolarMassTerm(molecule), KnownIdeas.MoleculeForAtom);
        }

        if (atom is not null)
        {
            yield return (new MolarMassTerm(atom), KnownIdeas.AtomForMolecule);
        }

        foreach (string other in facts.Formulas.Concat(SubstanceFacts.AddedUpWrongly(term.Formula)).Distinct(StringComparer.Ordinal))
        {
            if (other != term.Formula && other != molecule && other != atom)
            {
                yield return (new MolarMassTerm(other), KnownIdeas.WrongMolarMass);
            }
        }

        if (SubstanceFacts.DotAsTimes(term.Formula) is Expression product)
        {
            yield return (product, KnownIdeas.DotAsTimes);
        }
    }

    /// <summary>In a single step the molar mass of something else is also what somebody has who exchanged two, or used one for all.</summary>
    private static IEnumerable<(Expression By, Idea Idea)> InOneStep(MolarMassTerm term, MarkingFacts facts) =>
    [
        .. facts.Answers.SelectMany(a => a.Formula.MolarMasses).Distinct(StringComparer.Ordinal).Where(f => f != term.Formula)
            .Select(f => ((Expression)new MolarMassTerm(f), KnownIdeas.MolarMassesSwapped)),
        .. facts.Formulas.Where(f => f != term.Formula && f != SubstanceFacts.MoleculeOf(term.Formula) && f != SubstanceFacts.AtomOf(term.Formula))
            .Select(f => ((Expression)new MolarMassTerm(f), KnownIdeas.OneMolarMass)),
    ];

    private static IEnumerable<Mutation> AsGas(Expression tree, BinaryOperation step) =>
        GasVolumes.Select(volume =>
            new Mutation(tree.Replace(step, new BinaryOperation(Operator.Divide, step.Left, new NumberTerm(volume))), KnownIdeas.GasVolume));

    /// <summary>Who skips the moles on the way there skips them on the way back as well.</summary>
    private static Expression WithoutFactor(Expression node) => node is BinaryOperation { Operator: Operator.Multiply } product
        ? product.Right is MolarMassTerm ? product.Left : product.Left is MolarMassTerm ? product.Right : product
        : node;

    private static Expression EachStep(Expression tree, Func<BinaryOperation, Expression> by) =>
        tree.Rewrite(node => MarkingFacts.IsMoleStep(node) ? by((BinaryOperation)node) : node);

    private static Expression EachMass(Expression tree, Func<MolarMassTerm, Expression> by) =>
        tree.Rewrite(node => node is MolarMassTerm term ? by(term) : node);
}
