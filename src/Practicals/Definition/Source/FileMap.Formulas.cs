using Calx.Measurement.Expressions;
using Calx.Measurement.Numbers;
using Calx.Measurement.Uncertainty;

namespace Calx.Practicals.Definition.Source;

/// <content>Formulas.</content>
internal sealed partial class FileMap
{
    /// <summary>A formula that must be there, over names of some tables.</summary>
    public Expression Formula(string key, params IdTable[] names) =>
        Need(key, $"a formula over {Kinds(names)}") is FileNode value ? FormulaOf(value, names) : NoFormula;

    /// <summary>A formula that may be missing.</summary>
    public Expression? OptionalFormula(string key, params IdTable[] names) =>
        Find(key) is FileNode value ? FormulaOf(value, names) : null;

    /// <summary>The formula in a node; 0 stands in for one that cannot be read, which is noted.</summary>
    public Expression FormulaOf(FileNode value, params IdTable[] names)
    {
        if (value is not ScalarNode { IsNothing: false } scalar)
        {
            if (value is not UnreadableNode)
            {
                faults.Add(value.At, $"{Said(value)}, where a formula over {Kinds(names)} was expected");
            }

            return NoFormula;
        }

        Parsed<Expression> parsed = Expression.Parse(scalar.Text);
        if (!parsed.Succeeded)
        {
            faults.Add(Within(scalar, parsed.Fault.Span), $"{parsed.Fault}");
            return NoFormula;
        }

        CheckNames(scalar, parsed.Value, names);
        return parsed.Value;
    }

    /// <summary>Notes a formula that has no value, whatever the readings: a division by what is always 0, a root of what never has one.</summary>
    /// <param name="key">The key behind which it stands.</param>
    /// <param name="formula">The formula.</param>
    /// <returns>Whether it has values.</returns>
    public bool HasValue(string key, Expression formula)
    {
        UndefinedResultException? fault = null;
        // Now one reading is the largest and now another: what has no value for any order of them has none at all.
        for (int order = 0; order < 2 * Math.Max(1, formula.Names.Count); order++)
        {
            fault = NoValue(formula, order);
            if (fault is null)
            {
                return true;
            }
        }

        FileNode? value = Find(key);
        bool placed = value is ScalarNode scalar && fault!.Span is SourceSpan { Length: > 0 } span && span.Start + span.Length <= scalar.Text.Length;
        faults.Add(
            placed ? Within((ScalarNode)value!, fault!.Span!.Value) : (value?.At ?? At),
            $"this formula has no value, whatever the readings: {fault!.Message}; take out what is always 0 below a fraction line, or has no root or logarithm");
        return false;
    }

    /// <summary>Why a formula or one of its slopes has no value for readings that stand in no simple relation to each other.</summary>
    private static UndefinedResultException? NoValue(Expression formula, int order)
    {
        string[] names = [.. formula.Names];
        string[] formulas = [.. formula.MolarMasses];
        try
        {
            formula.Evaluate(Reading, MolarMass);
            foreach (string name in names)
            {
                formula.Derivative(name).Evaluate(Reading, MolarMass);
            }

            return null;
        }
        catch (UndefinedResultException fault)
        {
            return fault;
        }

        double Reading(string name)
        {
            int place = (Array.IndexOf(names, name) + (order / 2)) % names.Length;
            return Math.Sqrt(401 + (30 * (order % 2 == 0 ? place : names.Length - place)));
        }

        double MolarMass(string of) => Math.Sqrt(2003 + (70 * Array.IndexOf(formulas, of)));
    }

    /// <summary>The place of a run of characters of a scalar in the file.</summary>
    public static FilePosition Within(ScalarNode scalar, SourceSpan span)
    {
        int quote = scalar.Plain ? 0 : 1;
        // A text folded over several lines has lost its line ends: its start is the best that can be told.
        return scalar.Text.Contains('\n', StringComparison.Ordinal)
            ? scalar.At
            : scalar.At with { Column = scalar.At.Column + quote + span.Start };
    }

    private static readonly Expression NoFormula = Expression.Number(0);

    private void CheckNames(ScalarNode scalar, Expression formula, IdTable[] names)
    {
        foreach (NameTerm term in formula.Nodes.OfType<NameTerm>().Where(t => !names.Any(table => table.IsMissing || table.Has(t.Name))))
        {
            string choice = NearestWord.Choice(term.Name, names.SelectMany(table => table.All));
            faults.Add(
                Within(scalar, term.Span),
                names.Select(table => table.WhyNotYet(term.Name, At.Line)).FirstOrDefault(reason => reason is not null) ?? $"there is no {Kinds(names)} '{term.Name}'; {choice}");
        }
    }

    // A kind of which there is none at all is left out: no practical without curves is asked for one.
    private static string Kinds(IdTable[] names)
    {
        string[] some = [.. names.Where(table => table.All.Count > 0).Select(table => table.Kind)];
        return string.Join(" or ", some.Length > 0 ? some : [.. names.Select(table => table.Kind)]);
    }
}
