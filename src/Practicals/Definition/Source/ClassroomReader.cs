namespace Calx.Practicals.Definition.Source;

/// <summary>Reads what a plan is to know besides the steps: amounts, and the classroom.</summary>
internal sealed class ClassroomReader(IdTables ids, FaultList faults)
{
    /// <summary>The amounts, or null where the file has none.</summary>
    public AmountsDefinition? Amounts(FileMap root)
    {
        if (root.Map("amounts", "the choice of amounts") is not FileMap map)
        {
            return null;
        }

        double usual = map.Number("usual", NumberRange.AboveZero);
        double least = map.Number("least", NumberRange.AboveZero);
        double? fits = map.OptionalNumber("fits", NumberRange.AboveZero);
        if (usual < least || fits < usual)
        {
            faults.Add(map.At, "the amounts rise from 'least' over 'usual' to what the vessel 'fits'");
        }

        var amounts = new AmountsDefinition(usual, least, fits, Grows(map), map.Provenance(), map.At);
        map.Close();
        return amounts;
    }

    /// <summary>The classroom; the usual one where the file says nothing.</summary>
    public ClassroomDefinition Classroom(FileMap root)
    {
        if (root.Map("classroom", "the classroom") is not FileMap map)
        {
            return ClassroomDefinition.Usual;
        }

        var classroom = new ClassroomDefinition(
            map.Number("gasOff", NumberRange.FromZero),
            map.Number("late", NumberRange.Share),
            StepTimes.Of(map, "lateBy", faults) ?? ClassroomDefinition.Usual.LateBy,
            StepTimes.Of(map, "newStart", faults) ?? ClassroomDefinition.Usual.NewStart,
            map.Provenance(),
            map.At);
        map.Close();
        return classroom;
    }

    private Dictionary<string, double> Grows(FileMap amounts)
    {
        var grows = new Dictionary<string, double>(StringComparer.Ordinal);
        foreach (FileEntry entry in amounts.Map("grows", "rates that grow, cause to power")?.Pairs() ?? [])
        {
            if (amounts.ReferenceOf(entry.Key, ids.Causes) is string cause
                && amounts.NumberOf(entry.Value, NumberRange.FromZero) is double power)
            {
                grows[cause] = power;
            }
        }

        return grows;
    }
}
