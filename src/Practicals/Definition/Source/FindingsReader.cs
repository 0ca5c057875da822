using Calx.Chemistry.Formulas;
using Calx.Measurement.Expressions;

namespace Calx.Practicals.Definition.Source;

/// <summary>Reads what the class is judged on.</summary>
internal sealed class FindingsReader(IdTables ids, FaultList faults)
{
    private static readonly Dictionary<string, ExpectedChange> Changes = new()
    {
        ["rises"] = ExpectedChange.Rises,
        ["falls"] = ExpectedChange.Falls,
        ["same"] = ExpectedChange.Same,
    };

    private readonly FormulaReader formulas = new(faults);
    private readonly EquationReader equations = new(ids, faults);

    public FindingsDefinition Read(FileMap root)
    {
        FileNode value = root.Need("findings", "what the class is judged on") ?? new UnreadableNode(root.At);
        var map = new FileMap(value, "the findings", faults);
        var findings = new FindingsDefinition(
            map.Reference("key", ids.Quantities),
            map.Reference("change", ids.Quantities),
            map.Reference("sample", ids.Quantities),
            map.Word("expect", Changes),
            ConstantMass(map),
            map.OptionalText("emptyAdvice"),
            FormulaSearch(map),
            map.Each("alternatives", "an alternative", equations.Alternative, needed: false),
            AsExpected(map),
            Decision(map),
            map.At);
        map.Close();
        return findings;
    }

    private ConstantMassDefinition? ConstantMass(FileMap findings)
    {
        if (findings.Map("constantMass", "the rule of constant mass") is not FileMap map)
        {
            return null;
        }

        var rule = new ConstantMassDefinition(
            map.Reference("reading", ids.Readings),
            map.Number("toleranceInDivisions", NumberRange.AboveZero),
            map.Number("leastConversion", NumberRange.ShareAboveZero),
            map.Provenance(),
            map.At);
        map.Close();
        return rule;
    }

    private AsExpectedDefinition? AsExpected(FileMap findings)
    {
        if (findings.Map("asExpected", "the rule of what is expected") is not FileMap map)
        {
            return null;
        }

        Expression difference = map.Formula("difference", ids.Readings);
        string[] readings = [.. difference.Names];
        if (readings.Any(r => difference.Derivative(r).Names.Count > 0) && map.Find("difference") is FileNode written)
        {
            faults.Add(written.At, "the key difference is a sum of readings with fixed factors; here readings are multiplied or divided by each other");
        }

        var rule = new AsExpectedDefinition(
            difference,
            map.Number("divisions", NumberRange.AboveZero),
            map.Number("share", NumberRange.ShareAboveZero),
            map.Provenance(),
            map.At);
        map.Close();
        return rule;
    }

    private static DecisionDefinition? Decision(FileMap findings)
    {
        if (findings.Map("decision", "what one more heating is worth") is not FileMap map)
        {
            return null;
        }

        var decision = new DecisionDefinition(
            map.Number("matters", NumberRange.AboveZero),
            map.Number("worthMinutes", NumberRange.AboveZero),
            map.Provenance(),
            map.At);
        map.Close();
        return decision;
    }

    private FormulaSearch? FormulaSearch(FileMap findings)
    {
        if (findings.Map("formula", "the search for a formula") is not FileMap map)
        {
            return null;
        }

        var elements = new Dictionary<string, string>(StringComparer.Ordinal);
        FileNode masses = map.Need("elements", "masses, element to quantity") ?? new UnreadableNode(map.At);
        foreach (FileEntry entry in new FileMap(masses, "masses, element to quantity", faults).Pairs())
        {
            if (formulas.Of(entry.Key) is Formula element && map.ReferenceOf(entry.Value, ids.Quantities) is string mass)
            {
                elements[element.ToString()] = mass;
            }
        }

        if (masses is MapNode { Entries.Count: < 2 })
        {
            faults.Add(masses.At, "a formula needs at least two elements, each with the quantity that is its mass");
        }

        var search = new Definition.FormulaSearch(elements, map.Whole("largest", 1), formulas.Needed(map, "accepted"), map.At);
        map.Close();
        return search;
    }
}
