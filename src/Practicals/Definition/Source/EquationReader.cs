using System.Globalization;
using System.Text.RegularExpressions;
using Calx.Measurement.Expressions;

namespace Calx.Practicals.Definition.Source;

/// <summary>Reads formulas and equations, and ties the formulas of an equation to the practical's materials.</summary>
internal sealed partial class EquationReader(IdTables ids, FaultList faults)
{
    public string? OptionalFormula(FileMap map, string key) => map.Find(key) is ScalarNode node ? Formula(node) : null;

    public string NeededFormula(FileMap map, string key) =>
        map.Need(key, "a formula") is ScalarNode node ? Formula(node) ?? "?" : "?";

    public string? Formula(ScalarNode node)
    {
        if (!node.Text.Contains(' ', StringComparison.Ordinal))
        {
            return node.Text;
        }

        faults.Add(node.At, $"'{node.Text}' is no formula");
        return null;
    }

    public void CheckMolarMasses(ScalarNode written, Expression formula)
    {
        foreach (MolarMassTerm term in formula.Nodes.OfType<MolarMassTerm>())
        {
            Formula(new ScalarNode(term.Formula, Plain: true, FileMap.Within(written, term.Span)));
        }
    }

    public Reaction Reaction(FileMap map, IReadOnlyList<Material> materials)
    {
        _ = materials;
        var meant = new Dictionary<string, string>(StringComparer.Ordinal);
        FileMap? pairs = map.Map("materials", "materials, formula to material");
        foreach (FileEntry entry in pairs?.Pairs() ?? [])
        {
            meant[entry.Key.Text] = map.ReferenceOf(entry.Value, ids.Materials) ?? "?";
        }

        string id = map.Id("id", ids.Reactions);
        string text = map.Text("equation");
        string[] sides = text.Split("->");
        if (sides.Length != 2)
        {
            faults.Add(map.At, "an equation has one arrow");
        }

        return new Reaction(
            id, text, map.Reference("limiting", ids.Materials), Side(sides[0], meant), Side(sides[^1], meant), map.At);
    }

    public Alternative Alternative(FileMap map) => new(
        map.Id("id", ids.Alternatives),
        map.Text("label"),
        map.Text("equation"),
        map.Text("sample"),
        map.Texts("stays"),
        map.At);

    private static ReactionTerm[] Side(string side, Dictionary<string, string> meant) =>
        [.. side.Split(" + ").Select(t => Written().Match(t.Trim())).Select(m => new ReactionTerm(
            m.Groups[1].Length == 0 ? 1 : long.Parse(m.Groups[1].Value, CultureInfo.InvariantCulture),
            m.Groups[2].Value,
            meant.GetValueOrDefault(m.Groups[2].Value, "?")))];

    [GeneratedRegex(@"^([0-9]{0,3})(.*)\z")]
    private static partial Regex Written();
}
