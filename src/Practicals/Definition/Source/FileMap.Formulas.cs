using Calx.Measurement.Expressions;
using Calx.Measurement.Numbers;

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
        foreach (NameTerm term in formula.Nodes.OfType<NameTerm>().Where(t => !names.Any(table => table.Has(t.Name))))
        {
            string choice = NearestWord.Choice(term.Name, names.SelectMany(table => table.All));
            faults.Add(Within(scalar, term.Span), $"there is no {Kinds(names)} '{term.Name}'; {choice}");
        }
    }

    // A kind of which there is none at all is left out: no practical without curves is asked for one.
    private static string Kinds(IdTable[] names)
    {
        string[] some = [.. names.Where(table => table.All.Count > 0).Select(table => table.Kind)];
        return string.Join(" or ", some.Length > 0 ? some : [.. names.Select(table => table.Kind)]);
    }
}
