using System.Globalization;

namespace Calx.Practicals.Definition.Source;

/// <summary>Reads three times: <c>[least, likely, most]</c>. What is wrong with them hides nothing else of the file: no other part rests on
/// minutes.</summary>
internal static class StepTimes
{
    /// <summary>No step of a lesson lasts longer; what is left overnight is another lesson's.</summary>
    private const double Longest = 1000;

    /// <summary>The times under a key that must be there, or null where they cannot be read.</summary>
    public static StepMinutes? Of(FileMap map, string key, FaultList faults)
    {
        int before = faults.Spoiling;
        StepMinutes? times = Read(map, key, faults);
        faults.Forgive(before);
        return times;
    }

    private static StepMinutes? Read(FileMap map, string key, FaultList faults)
    {
        if (map.Need(key, "[least, likely, most]") is not FileNode value)
        {
            return null;
        }

        if (value is ScalarNode single && FileNumber.Read(single, out _) is double likely and > 0 and <= Longest)
        {
            faults.Add(value.At, $"{single.Text} stands here alone; write the least, the likely and the most minutes, such as {Written(GuessedMinutes.About(likely))}");
            return null;
        }

        double[]? numbers = map.Numbers(value, ["least", "likely", "most"]);
        if (numbers is null)
        {
            return null;
        }

        if (WrongWith(numbers) is string reason)
        {
            faults.Add(value.At, reason);
        }

        return new StepMinutes(numbers[0], numbers[1], numbers[2]);
    }

    private static string? WrongWith(double[] numbers) =>
        numbers.Min() < 0 ? $"minutes are never below 0, and {Number(numbers.Min())} stands here; write [least, likely, most]"
        : numbers.Max() > Longest ? $"{Number(numbers.Max())} min is longer than any step, which lasts {Number(Longest)} at most; leave to another lesson what takes longer"
        : numbers.Max() == 0 ? "all three are 0; a step takes some time, such as [0.5, 1, 2]"
        : numbers[0] > numbers[1] || numbers[1] > numbers[2]
            ? $"the times rise from the least over the likely to the most, and these do not; in order they are {Written([.. numbers.Order()])}"
            : null;

    private static string Written(double[] minutes) => $"[{string.Join(", ", minutes.Select(Number))}]";

    private static string Number(double number) => number.ToString("0.######", CultureInfo.InvariantCulture);
}
