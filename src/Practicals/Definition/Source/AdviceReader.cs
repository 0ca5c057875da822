namespace Calx.Practicals.Definition.Source;

/// <summary>Reads what helps to tell causes apart: actions, circumstances of a class, and how things cool.</summary>
internal sealed class AdviceReader(IdTables ids, FaultList faults)
{
    private static readonly Dictionary<string, ActionKind> Kinds = new()
    {
        ["reheat"] = ActionKind.Reheat,
        ["reweigh"] = ActionKind.Reweigh,
        ["reread"] = ActionKind.Reread,
        ["zero"] = ActionKind.Zero,
        ["without-part"] = ActionKind.WithoutPart,
        ["look"] = ActionKind.Look,
    };

    private readonly ParameterReader parameters = new(ids, faults);

    public IReadOnlyList<ActionDefinition> Actions(FileMap root, bool repeats) =>
        root.Each("actions", "an action", map => Action(map, repeats), needed: false);

    public IReadOnlyList<ConditionDefinition> Conditions(FileMap root) =>
        root.Each("conditions", "a condition", Condition, needed: false);

    public CoolingDefinition? Cooling(FileMap root)
    {
        if (root.Map("cooling", "how things cool") is not FileMap map)
        {
            return null;
        }

        var points = new List<CoolingPoint>();
        foreach (FileNode node in map.Nodes("points", "[minutes, kelvin]"))
        {
            if (map.Numbers(node, ["minutes", "kelvin above the room"]) is double[] pair)
            {
                Add(points, new CoolingPoint(pair[0], pair[1]), node.At);
            }
        }

        if (points.Count < 2)
        {
            faults.Add(map.At, "a cooling curve has at least two points, [minutes, kelvin above the room]");
            points = [new CoolingPoint(0, 2), new CoolingPoint(1, 1)];
        }

        var cooling = new CoolingDefinition(
            map.Reference("reading", ids.Readings),
            points,
            map.Number("relativeSpread", NumberRange.AboveZero),
            map.Provenance(),
            map.At);
        map.Close();
        return cooling;
    }

    private void Add(List<CoolingPoint> points, CoolingPoint point, FilePosition at)
    {
        bool first = points.Count == 0;
        if (point.Minutes < 0 || !(point.ExcessInKelvin > 0)
            || (!first && !(point.Minutes > points[^1].Minutes && point.ExcessInKelvin < points[^1].ExcessInKelvin)))
        {
            faults.Add(at, "the minutes of a cooling curve rise from 0 and its kelvins fall, all above 0");
            return;
        }

        points.Add(point);
    }

    private ActionDefinition Action(FileMap map, bool repeats)
    {
        ActionKind kind = map.Word("kind", Kinds);
        if (kind == ActionKind.Reheat && !repeats)
        {
            faults.Add(map.At, "an action of the kind 'reheat' needs a 'repeat' in the procedure");
        }

        return new ActionDefinition(
            map.Id("id", ids.Actions),
            map.Text("label"),
            kind,
            map.Number("minutes", NumberRange.AboveZero),
            kind == ActionKind.WithoutPart ? map.Reference("part", ids.Parts) : null,
            kind == ActionKind.Look ? map.Reference("observation", ids.Observations) : null,
            map.Flag("teacherOnly"),
            map.Provenance(),
            map.At);
    }

    private ConditionDefinition Condition(FileMap map)
    {
        var rates = new Dictionary<string, double>(StringComparer.Ordinal);
        foreach (FileEntry entry in map.Map("rates", "shares of groups, cause to share")?.Pairs() ?? [])
        {
            double? rate = map.NumberOf(entry.Value, NumberRange.Share);
            if (map.ReferenceOf(entry.Key, ids.Causes) is string cause)
            {
                rates[cause] = rate ?? 0;
            }
        }

        return new ConditionDefinition(
            map.Id("id", ids.Conditions),
            map.Text("label"),
            rates,
            map.Find("set") is FileNode value ? parameters.Settings(map, value) : [],
            map.Provenance(),
            map.At);
    }
}
