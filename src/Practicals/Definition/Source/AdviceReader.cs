namespace Calx.Practicals.Definition.Source;

/// <summary>Reads what helps to tell causes apart: actions, circumstances of a class, and how things cool.</summary>
/// <param name="ids">The ids declared so far.</param>
/// <param name="faults">Where faults are noted.</param>
/// <param name="observations">What a group may have seen; some of it is for the teacher alone.</param>
internal sealed class AdviceReader(IdTables ids, FaultList faults, IReadOnlyList<Observation> observations)
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
    private readonly HashSet<string> forTeachers = [.. observations.Where(o => o.TeacherOnly).Select(o => o.Id)];

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

        var cooling = new CoolingDefinition(
            map.Reference("reading", ids.Readings),
            Points(map),
            map.Number("relativeSpread", NumberRange.AboveZero),
            map.Provenance(),
            map.At);
        map.Close();
        return cooling;
    }

    private List<CoolingPoint> Points(FileMap map)
    {
        const string Expected = "[minutes, kelvin above the room]";
        var points = new List<CoolingPoint>();
        FileNode? value = map.Need("points", $"at least two points, {Expected}");
        IReadOnlyList<FileNode> nodes = map.Nodes("points", Expected);
        if (value is ListNode && nodes.Count < 2)
        {
            faults.Add(value.At, $"a list of {nodes.Count} stands here; expected at least two points, {Expected}");
        }

        foreach (FileNode node in nodes)
        {
            if (map.Numbers(node, ["minutes", "kelvin above the room"]) is double[] pair)
            {
                Add(points, new CoolingPoint(pair[0], pair[1]), node.At);
            }
        }

        return points;
    }

    private void Add(List<CoolingPoint> points, CoolingPoint point, FilePosition at)
    {
        bool first = points.Count == 0;
        if (point.Minutes < 0 || !(point.ExcessInKelvin > 0)
            || (!first && !(point.Minutes > points[^1].Minutes && point.ExcessInKelvin < points[^1].ExcessInKelvin)))
        {
            faults.Add(at, "expected minutes from 0 that rise from point to point, and kelvins above 0 that fall");
            return;
        }

        points.Add(point);
    }

    private ActionDefinition Action(FileMap map, bool repeats)
    {
        ActionKind? kind = KindOf(map, repeats);
        string? observation = Only(map, "observation", ids.Observations, kind, ActionKind.Look);
        bool teacherOnly = map.Flag("teacherOnly");
        if (observation is not null && !teacherOnly && forTeachers.Contains(observation))
        {
            faults.Add(
                map.Find("observation")!.At,
                $"'{observation}' is for the teacher alone, and so is looking for it; expected teacherOnly: true");
        }

        return new ActionDefinition(
            map.Id("id", ids.Actions),
            map.Text("label"),
            kind ?? ActionKind.Reread,
            map.Number("minutes", NumberRange.AboveZero),
            Only(map, "part", ids.Parts, kind, ActionKind.WithoutPart),
            observation,
            teacherOnly,
            map.Provenance(),
            map.At);
    }

    /// <summary>The kind, or null where it cannot be read, which is noted: its own keys are then left alone.</summary>
    private ActionKind? KindOf(FileMap map, bool repeats)
    {
        int before = faults.Count;
        ActionKind kind = map.Word("kind", Kinds);
        if (faults.Count > before)
        {
            return null;
        }

        if (kind == ActionKind.Reheat && !repeats)
        {
            faults.Add(
                map.Find("kind")!.At,
                "'reheat' is one more round of what the procedure repeats, and it repeats nothing; expected a 'repeat' event there");
        }

        return kind;
    }

    /// <summary>An id under a key that one kind of action needs and no other has.</summary>
    private string? Only(FileMap map, string key, IdTable table, ActionKind? kind, ActionKind owner)
    {
        if (kind == owner)
        {
            return map.Need(key, $"the id of the {key}") is FileNode value ? map.ReferenceOf(value, table) : null;
        }

        if (map.Find(key) is FileNode stray && kind is not null)
        {
            string word = Kinds.First(pair => pair.Value == owner).Key;
            faults.Add(stray.At, $"'{key}' belongs to an action of the kind '{word}' alone; leave it off, or write kind: {word}");
        }

        return null;
    }

    private ConditionDefinition Condition(FileMap map)
    {
        int before = faults.Count;
        var rates = new Dictionary<string, double>(StringComparer.Ordinal);
        foreach (FileEntry entry in map.Map("rates", "shares of groups, cause to share")?.Pairs() ?? [])
        {
            double? rate = map.NumberOf(entry.Value, NumberRange.Share);
            if (map.ReferenceOf(entry.Key, ids.Causes) is string cause)
            {
                rates[cause] = rate ?? 0;
            }
        }

        FileNode? set = map.Find("set");
        if (rates.Count == 0 && set is null && faults.Count == before)
        {
            faults.Add(map.At, "this condition changes nothing; expected rates, { cause: share }, or set, { parameter: law }, or both");
        }

        return new ConditionDefinition(
            map.Id("id", ids.Conditions),
            map.Text("label"),
            rates,
            set is null ? [] : parameters.Settings(map, set),
            map.Provenance(),
            map.At);
    }
}
