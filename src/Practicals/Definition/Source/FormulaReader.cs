using Calx.Chemistry.Elements;
using Calx.Chemistry.Formulas;
using Calx.Measurement.Expressions;
using Calx.Measurement.Numbers;
using Calx.Measurement.Uncertainty;

namespace Calx.Practicals.Definition.Source;

/// <summary>Reads chemical formulas and makes sure that each has a molar mass.</summary>
internal sealed class FormulaReader(FaultList faults)
{
    /// <summary>Stands in for a formula that could not be read; the practical is then not used.</summary>
    private static readonly Formula Unread = Formula.Parse("H").Value;

    /// <summary>A formula under a key that may be missing.</summary>
    public Formula? Optional(FileMap map, string key) => map.Find(key) is FileNode value ? Of(value) : null;

    /// <summary>A formula under a key that must be there.</summary>
    public Formula Needed(FileMap map, string key) =>
        map.Need(key, "a chemical formula") is FileNode value ? Of(value) ?? Unread : Unread;

    /// <summary>The formula in a node, or null where there is none, which is noted.</summary>
    public Formula? Of(FileNode value)
    {
        if (value is ScalarNode { IsNothing: false } scalar)
        {
            return Of(scalar, new SourceSpan(0, scalar.Text.Length));
        }

        if (value is not UnreadableNode)
        {
            faults.Add(value.At, "a chemical formula was expected here, such as CuSO4.5H2O");
        }

        return null;
    }

    /// <summary>Notes every M( ) of a formula over readings whose substance has no molar mass.</summary>
    public void CheckMolarMasses(ScalarNode written, Expression formula)
    {
        foreach (MolarMassTerm term in formula.Nodes.OfType<MolarMassTerm>())
        {
            Of(written, term.FormulaSpan);
        }
    }

    /// <summary>Notes a formula with an element that has no atomic weight.</summary>
    public void CheckHasMolarMass(Formula formula, FilePosition at)
    {
        Parsed<UncertainValue> mass = formula.FindMolarMass(AtomicWeights.Iupac2024);
        if (!mass.Succeeded)
        {
            faults.Add(at, $"{formula} has no molar mass: {mass.Fault}");
        }
    }

    private Formula? Of(ScalarNode scalar, SourceSpan span)
    {
        Parsed<Formula> parsed = Formula.Parse(scalar.Text.Substring(span.Start, span.Length));
        if (!parsed.Succeeded)
        {
            var within = new SourceSpan(span.Start + parsed.Fault.Span.Start, parsed.Fault.Span.Length);
            string reason = parsed.Fault.ToString();
            // Where the reader of formulas offers nothing, what a formula looks like is offered.
            faults.Add(FileMap.Within(scalar, within), reason.Contains(';', StringComparison.Ordinal) ? reason : $"{reason}; a formula is made of the elements' symbols and numbers, such as CuSO4.5H2O");
            return null;
        }

        CheckHasMolarMass(parsed.Value, FileMap.Within(scalar, span));
        return parsed.Value;
    }
}
