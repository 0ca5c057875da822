using System.Globalization;

namespace Calx.Practicals.Definition.Source;

/// <summary>Reads what the lesson takes and what keeps it safe: kit, steps, limits and hazards.</summary>
internal sealed class LessonReader(IdTables ids, FaultList faults)
{
    public LessonPlan Read(FileMap root, IReadOnlyList<Material> materials)
    {
        IReadOnlyList<KitItem> kit = root.Each("kit", "a piece of kit", new KitReader(ids, faults).Item);
        IReadOnlyList<LessonStep> steps = root.Each("steps", "a step", Step);
        var classroom = new ClassroomReader(ids, faults);
        AmountLimits limits = Limits(root);
        AmountsDefinition? amounts = classroom.Amounts(root);
        CheckUsual(limits, amounts);
        return new LessonPlan(
            steps,
            kit,
            limits,
            amounts,
            classroom.Classroom(root),
            root.Each("hazards", "a hazard with its control", map => Hazard(map, materials)),
            new DrawingReader(ids, faults).Drawings(root));
    }

    private LessonStep Step(FileMap map)
    {
        // What a step refers to comes before it, so its own id is declared last.
        StepPlace place = new StepPlaceReader(ids, faults).Place(map);
        return new(
            map.Id("id", ids.Steps),
            map.Text("label"),
            StepTimes.Of(map, "minutes", faults) ?? new StepMinutes(0, 0, 0),
            Held(map),
            map.OptionalReference("reading", ids.Readings),
            place,
            map.Provenance(),
            map.At);
    }

    private Dictionary<string, int> Held(FileMap map)
    {
        var held = new Dictionary<string, int>(StringComparer.Ordinal);
        foreach (FileEntry entry in map.Map("kit", "kit held, piece to number")?.Pairs() ?? [])
        {
            int number = map.WholeOf(entry.Value, 1);
            string? piece = entry.Key.Text is LessonStep.Balance or LessonStep.Teacher ? entry.Key.Text : map.ReferenceOf(entry.Key, ids.Kit);
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
            map.Find("groups") is FileNode groups ? map.WholeOf(groups, 1) : null,
            map.OptionalText("note"),
            map.Provenance(),
            map.At);
        map.Close();
        if (limits.Unit is not ("g" or "") && map.Find("unit") is ScalarNode unit)
        {
            faults.AddHarmless(unit.At, $"the largest sample is in {limits.Unit}; every sample is measured in g, so write it in g, with unit: g");
        }

        return limits;
    }

    /// <summary>A plan starts from the usual sample, so a class must be allowed to use it. 0 stands for what could not be read.</summary>
    private void CheckUsual(AmountLimits limits, AmountsDefinition? amounts)
    {
        if (limits.LargestSample > 0 && amounts is not null && amounts.UsualInGrams > limits.LargestSample)
        {
            faults.AddHarmless(limits.At, string.Create(
                CultureInfo.InvariantCulture,
                $"the usual sample, {amounts.UsualInGrams:0.######} g (line {amounts.At.Line}), is more than a class may use, {limits.LargestSample:0.######} g; lower 'usual' there, or raise 'largestSample' if your employer's risk assessment allows it"));
        }
    }

    private Hazard Hazard(FileMap map, IReadOnlyList<Material> materials)
    {
        string of = map.Text("of");
        Material? material = materials.FirstOrDefault(m => m.Id == of) ?? materials.FirstOrDefault(m => m.Label == of);
        return new Hazard(
            material?.Label ?? of, material?.Id, map.Text("hazard"), map.Text("control"), GhsReader.Read(map, faults), map.Provenance(), map.At);
    }
}
