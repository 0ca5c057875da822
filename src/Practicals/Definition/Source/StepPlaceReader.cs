namespace Calx.Practicals.Definition.Source;

/// <summary>Reads where a step stands in the lesson, and where else it could.</summary>
internal sealed class StepPlaceReader(IdTables ids, FaultList faults)
{
    private static readonly Dictionary<string, StepPer> Pers = new()
    {
        ["group"] = StepPer.Group,
        ["trial"] = StepPer.Trial,
        ["class"] = StepPer.Class,
    };

    private static readonly Dictionary<string, StepRound> Rounds = new()
    {
        ["first"] = StepRound.First,
        ["again"] = StepRound.Again,
        ["each"] = StepRound.Each,
    };

    private static readonly Dictionary<string, OtherLesson> Lessons = new()
    {
        ["before"] = OtherLesson.Before,
        ["after"] = OtherLesson.After,
    };

    /// <summary>The place of a step, before its own id is declared.</summary>
    public StepPlace Place(FileMap map)
    {
        StepRound round = map.Word("round", Rounds, StepRound.None);
        bool weighs = map.Find("reading") is not null;
        // A reading and a heating belong to each trial, whatever else is done once.
        StepPer per = map.Word("per", Pers, weighs || round != StepRound.None ? StepPer.Trial : StepPer.Group);
        if (round != StepRound.None && per != StepPer.Trial)
        {
            faults.Add(map.Find("per")!.At, "a step of a heating is done in each trial; leave 'per' out, or write per: trial");
        }

        var freedom = new StepFreedom(
            map.OptionalText("optional"),
            map.OptionalReference("gives", ids.Conditions),
            map.Flag("prepared"),
            map.Word("elsewhere", Lessons, OtherLesson.None),
            map.OptionalReference("during", ids.Steps),
            map.OptionalReference("alongside", ids.Steps));
        if (freedom.During is not null && (per == StepPer.Class || weighs))
        {
            faults.Add(map.Find("during")!.At, "a weighing, or what the whole class does together, cannot go on during another step");
        }

        return new StepPlace(per, round, freedom, map.OptionalNumber("grows", NumberRange.FromZero) ?? 0);
    }
}
