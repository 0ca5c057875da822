using Calx.Chemistry.Elements;
using Calx.Chemistry.Formulas;
using Calx.Measurement.Expressions;

namespace Calx.Practicals.Marking.Ideas;

/// <summary>What a molar mass is mistaken for, by the formula alone.</summary>
internal static class SubstanceFacts
{
    private static readonly string[] Diatomic = ["H", "N", "O", "F", "Cl", "Br", "I"];

    /// <summary>The sum of the atomic numbers, as if they were the masses; null for a formula that cannot be read.</summary>
    public static double? ByAtomicNumbers(string formula) =>
        Read(formula) is Formula read ? read.Composition.Sum(c => (double)c.Count * c.Element.AtomicNumber) : null;

    /// <summary>The molecule of an element whose atom is named, or null.</summary>
    public static string? MoleculeOf(string formula) => Diatomic.Contains(formula) ? formula + "2" : null;

    /// <summary>The atom of an element whose molecule is named, or null.</summary>
    public static string? AtomOf(string formula) => Diatomic.FirstOrDefault(symbol => formula == symbol + "2");

    /// <summary>Formulas that one comes to by leaving out an element, or the number behind it.</summary>
    public static IEnumerable<string> AddedUpWrongly(string formula)
    {
        if (Read(formula) is not Formula read || read.Composition.Count < 2)
        {
            yield break;
        }

        foreach (ElementCount left in read.Composition)
        {
            yield return Text(read.Composition.Where(c => c != left).Select(c => (c.Element, c.Count)));
            if (left.Count > 1)
            {
                yield return Text(read.Composition.Select(c => (c.Element, c == left ? 1 : c.Count)));
            }
        }
    }

    /// <summary>The molar mass of a hydrate with its dot taken for a multiplication, or null where there is no dot.</summary>
    public static Expression? DotAsTimes(string formula)
    {
        // Files write the dot as they can.
        int dot = formula.IndexOfAny(['·', '.', '∙', '*']);
        if (dot <= 0)
        {
            return null;
        }

        string behind = formula[(dot + 1)..];
        string water = behind.TrimStart("0123456789".ToCharArray());
        string count = behind[..^water.Length];
        return Read(formula[..dot]) is null || Read(water) is null ? null : new BinaryOperation(
            Operator.Multiply,
            new MolarMassTerm(formula[..dot]),
            count.Length == 0 ? new MolarMassTerm(water) : new BinaryOperation(Operator.Multiply, Expression.Parse(count).Value!, new MolarMassTerm(water)));
    }

    private static Formula? Read(string formula) => Formula.Parse(formula) is { Succeeded: true, Value: Formula read } ? read : null;

    private static string Text(IEnumerable<(Element Element, long Count)> parts) =>
        string.Concat(parts.Select(p => p.Count == 1 ? p.Element.Symbol : FormattableString.Invariant($"{p.Element.Symbol}{p.Count}")));
}
