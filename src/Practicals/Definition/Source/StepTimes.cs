namespace Calx.Practicals.Definition.Source;

/// <summary>Reads three times: <c>[least, likely, most]</c>.</summary>
internal static class StepTimes
{
    /// <summary>The times under a key that must be there, or null where they cannot be read.</summary>
    public static StepMinutes? Of(FileMap map, string key, FaultList faults)
    {
        FileNode? value = map.Need(key, "[least, likely, most]");
        double[]? numbers = value is null ? null : map.Numbers(value, ["least", "likely", "most"]);
        if (numbers is null)
        {
            return null;
        }

        if (!(0 <= numbers[0] && numbers[0] <= numbers[1] && numbers[1] <= numbers[2] && numbers[2] > 0 && numbers[2] <= StepMinutesLimit))
        {
            faults.Add(value!.At, "the times rise from the least over the likely to the most, none below 0, none above 1000 min");
        }

        return new StepMinutes(numbers[0], numbers[1], numbers[2]);
    }

    /// <summary>No step of a lesson lasts longer; what is left overnight is another lesson's.</summary>
    private const double StepMinutesLimit = 1000;
}
