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

    private static readonly Dictionary<string, RoundsBy> Rounds = new() { ["heating"] = RoundsBy.Heating, ["drying"] = RoundsBy.Drying };

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
            map.OptionalText("noAccepted"),
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
            map.OptionalNumber("leastConversion", NumberRange.Share),
            map.Find("by") is null ? RoundsBy.Heating : map.Word("by", Rounds),
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

        var rule = new AsExpectedDefinition(
            Difference(map),
            map.Number("divisions", NumberRange.AboveZero),
            map.Number("share", NumberRange.ShareAboveZero),
            map.Provenance(),
            map.At);
        map.Close();
        return rule;
    }

    /// <summary>The key difference: its slope in each reading is a number, so that a fault of so many grams in one reading
    /// moves it by as much whatever the other readings are.</summary>
    private Expression Difference(FileMap map)
    {
        const string Expected = "expected a sum of readings with fixed factors, such as after - before - 0.5 * (before - empty)";
        int before = faults.Count;
        Expression difference = map.Formula("difference", ids.Readings);
        if (map.Find("difference") is not ScalarNode written)
        {
            return difference;
        }

        formulas.CheckMolarMasses(written, difference);
        if (difference.Names.Count == 0 && faults.Count == before)
        {
            faults.Add(written.At, $"the key difference rests on no reading; {Expected}");
        }

        if (faults.Count > before || !map.HasValue("difference", difference))
        {
            return difference;
        }

        // A current times a time is no such sum; which readings may multiply which is checked once the instruments are known.
        if (ids.Gauges.All.Count == 0 && difference.Names.Any(reading => difference.Derivative(reading).Names.Count > 0))
        {
            faults.Add(written.At, $"here the effect of one reading depends on another; {Expected}");
        }

        return difference;
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
