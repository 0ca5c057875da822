using System.Globalization;
using Calx.Practicals.Definition;

namespace Calx.Practicals.Readings;

/// <summary>The practical's words for its readings, a number behind the second reheat and those after it.</summary>
public static class ReadingNames
{
    /// <summary>Name of one weighing, for example 'Mass after reheating 2' for the third time after heating.</summary>
    /// <param name="practical">The practical.</param>
    /// <param name="baseId">Id of a reading or ready-made column; another is its own name.</param>
    /// <param name="occurrence">1 for the first time it was taken.</param>
    public static string Of(Practical practical, string baseId, int occurrence)
    {
        ReadingDefinition? reading = practical.Readings.FirstOrDefault(r => r.Id == baseId);
        string label = reading?.Label ?? practical.FindColumn(baseId)?.Label ?? baseId;
        if (occurrence == 1)
        {
            return label;
        }

        // With a word of its own the first repeat needs no number: after heating, after reheating, after reheating 2.
        int number = reading?.RepeatLabel is null ? occurrence : occurrence - 1;
        string repeated = reading?.RepeatLabel ?? label;
        return number == 1 ? repeated : string.Create(CultureInfo.InvariantCulture, $"{repeated} {number}");
    }

    /// <summary>Name by an id such as <c>after2</c>.</summary>
    public static string OfId(Practical practical, string id)
    {
        string bare = id.TrimEnd('0', '1', '2', '3', '4', '5', '6', '7', '8', '9');
        bool repeat = practical.Readings.All(r => r.Id != id)
            && practical.Readings.Any(r => r.Id == bare)
            && bare.Length < id.Length;
        return repeat && int.TryParse(id.AsSpan(bare.Length), NumberStyles.None, CultureInfo.InvariantCulture, out int occurrence)
            ? Of(practical, bare, occurrence)
            : Of(practical, id, 1);
    }

    /// <summary>Unit of a reading or ready-made column.</summary>
    public static string UnitOf(Practical practical, string baseId) =>
        practical.Readings.FirstOrDefault(r => r.Id == baseId)?.Unit ?? practical.FindColumn(baseId)?.Unit ?? "g";
}
