namespace Calx.Practicals.Definition.Source;

/// <summary>Reads what the lesson takes and what keeps it safe: kit, steps, limits and hazards.</summary>
internal sealed class LessonReader(IdTables ids, FaultList faults)
{
    public LessonPlan Read(FileMap root, IReadOnlyList<Material> materials)
    {
        IReadOnlyList<KitItem> kit = root.Each("kit", "a piece of kit", Kit);
        return new LessonPlan(
            root.Each("steps", "a step", Step),
            kit,
            Limits(root),
            root.Each("hazards", "a hazard with its control", map => Hazard(map, materials)));
    }

    private KitItem Kit(FileMap map) => new(
        map.Id("id", ids.Kit),
        map.Text("label"),
        map.Number("perGroup", NumberRange.AboveZero),
        map.OptionalText("unit"),
        map.OptionalNumber("spareShare", NumberRange.FromZero) ?? 0,
        map.Flag("flame"),
        map.At);

    private LessonStep Step(FileMap map) => new(
        map.Id("id", ids.Steps),
        map.Text("label"),
        Minutes(map),
        Held(map),
        map.OptionalReference("reading", ids.Readings),
        map.Flag("optional"),
        map.Provenance(),
        map.At);

    private StepMinutes Minutes(FileMap map)
    {
        FileNode? value = map.Need("minutes", "[least, likely, most]");
        double[]? numbers = value is null ? null : map.Numbers(value, ["least", "likely", "most"]);
        if (numbers is null)
        {
            return new StepMinutes(0, 0, 0);
        }

        if (!(0 <= numbers[0] && numbers[0] <= numbers[1] && numbers[1] <= numbers[2] && numbers[2] > 0))
        {
            faults.Add(value!.At, "the times rise from the least over the likely to the most, none below 0");
        }

        return new StepMinutes(numbers[0], numbers[1], numbers[2]);
    }

    private Dictionary<string, int> Held(FileMap map)
    {
        var held = new Dictionary<string, int>(StringComparer.Ordinal);
        foreach (FileEntry entry in map.Map("kit", "kit held, piece to number")?.Pairs() ?? [])
        {
            int number = map.WholeOf(entry.Value, 1);
            string? piece = entry.Key.Text == LessonStep.Balance ? LessonStep.Balance : map.ReferenceOf(entry.Key, ids.Kit);
            if (piece is not null)
            {
                held[piece] = number;
            }
        }

        return held;
    }

    private AmountLimits Limits(FileMap root)
    {
        FileNode value = root.Need("limits", "the most that a class may use") ?? new UnreadableNode(root.At);
        var map = new FileMap(value, "the limits", faults);
        var limits = new AmountLimits(
            map.Number("largestSample", NumberRange.AboveZero),
            map.Text("unit"),
            map.OptionalText("note"),
            map.Provenance(),
            map.At);
        map.Close();
        return limits;
    }

    private static Hazard Hazard(FileMap map, IReadOnlyList<Material> materials)
    {
        string of = map.Text("of");
        Material? material = materials.FirstOrDefault(m => m.Id == of) ?? materials.FirstOrDefault(m => m.Label == of);
        return new Hazard(
            material?.Label ?? of, material?.Id, map.Text("hazard"), map.Text("control"), map.Provenance(), map.At);
    }
}
