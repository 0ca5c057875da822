using Calx.Measurement.Expressions;
using Calx.Practicals.Definition;

namespace Calx.Practicals.Marking.Ideas;

/// <summary>What a wrong working may take from the rest of the practical: other masses, other substances, earlier weighings.</summary>
internal sealed class MarkingFacts
{
    /// <summary>Ends the name under which the weighing before the last of a repeated reading is called.</summary>
    private const string EarlierEnding = "_earlier";

    /// <summary>Those of a practical.</summary>
    public MarkingFacts(Practical practical)
        : this(
            practical.Readings.ToDictionary(r => r.Id, r => new ReadingFacts(r.Unit, r.Repeats), StringComparer.Ordinal),
            [.. practical.AllAnswers.OfType<AnswerDefinition>()],
            [.. practical.Quantities.Select(q => q.Formula)],
            [.. practical.Materials.Select(m => m.Formula?.ToString()).OfType<string>()])
    {
    }

    /// <summary>Takes them apart from a practical.</summary>
    /// <param name="readings">The readings by id.</param>
    /// <param name="answers">The values asked for.</param>
    /// <param name="others">Formulas of what else is worked out from the readings.</param>
    /// <param name="substances">Chemical formulas of the substances.</param>
    public MarkingFacts(
        IReadOnlyDictionary<string, ReadingFacts> readings, IReadOnlyList<AnswerDefinition> answers, IReadOnlyList<Expression> others, IReadOnlyList<string> substances)
    {
        Readings = readings;
        Answers = answers;
        Differences = [.. answers.Select(a => a.Formula).Concat(others).SelectMany(f => f.Nodes).Where(IsDifference).Distinct()];
        Formulas = [.. substances.Concat(answers.SelectMany(a => a.Formula.MolarMasses)).Distinct(StringComparer.Ordinal)];
    }

    /// <summary>The practical's readings by id.</summary>
    public IReadOnlyDictionary<string, ReadingFacts> Readings { get; }

    /// <summary>The answers asked for; a formula may use earlier ones by name.</summary>
    public IReadOnlyList<AnswerDefinition> Answers { get; }

    /// <summary>All differences of two readings that anything in the practical asks for.</summary>
    public IReadOnlyList<Expression> Differences { get; }

    /// <summary>The formulas of its substances.</summary>
    public IReadOnlyList<string> Formulas { get; }

    /// <summary>A formula as people read it.</summary>
    public static string ForPeople(string formula) => formula.Replace(EarlierEnding, " (the weighing before)", StringComparison.Ordinal);

    /// <summary>The name of the weighing before the last of a repeated reading.</summary>
    public static string Earlier(string reading) => reading + EarlierEnding;

    /// <summary>Whether a node is one reading less another.</summary>
    public bool IsDifference(Expression node) => node is BinaryOperation
    {
        Operator: Operator.Subtract, Left: NameTerm left, Right: NameTerm right,
    } && Readings.ContainsKey(left.Name) && Readings.ContainsKey(right.Name);

    /// <summary>A formula with the formulas of earlier answers in place of their names, down to the readings.</summary>
    public Expression Expanded(Expression formula) =>
        Answers.Reverse().Aggregate(formula, (tree, answer) => tree.Substitute(answer.Id, answer.Formula));

    /// <summary>Whether a node turns a mass into moles: something divided by a molar mass.</summary>
    public static bool IsMoleStep(Expression node) => node is BinaryOperation { Operator: Operator.Divide, Right: MolarMassTerm };
}
