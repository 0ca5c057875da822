using System.Globalization;
using Microsoft.Extensions.Primitives;

namespace Calx.App.Pages.Practicals;

/// <summary>The fields of a plan's form as they came with an address, read one by one; what is wrong with each is noted for the field.</summary>
public sealed class PlanFields(IReadOnlyDictionary<string, StringValues> fields)
{
    private const int LongestField = 200;

    private readonly Dictionary<string, List<string>> faults = new(StringComparer.Ordinal);

    /// <summary>What is wrong, by field; faults of no single field stand under the empty name.</summary>
    public IReadOnlyDictionary<string, List<string>> Faults => faults;

    /// <summary>Names of the fields that came.</summary>
    public IEnumerable<string> Names => fields.Keys;

    /// <summary>A field as typed, without spaces round it; empty where it did not come.</summary>
    public string Text(string name) => All(name) is [string first, ..] ? first : "";

    /// <summary>All values of a field that may come several times.</summary>
    public IReadOnlyList<string> All(string name) => fields.TryGetValue(name, out StringValues values)
        ? [.. values.Select(v => v?.Trim() ?? "").Where(v => v.Length is > 0 and <= LongestField)] : [];

    /// <summary>Whether a box is ticked.</summary>
    public bool IsTicked(string name) => Text(name).Length > 0;

    /// <summary>Notes a fault of a field.</summary>
    public void Fault(string name, string sentence) =>
        (faults.TryGetValue(name, out List<string>? list) ? list : faults[name] = []).Add(sentence);

    /// <summary>A whole number in a range; null where nothing was typed, or something else, which is noted.</summary>
    public int? Whole(string name, int least, int most)
    {
        string text = Text(name);
        if (text.Length == 0)
        {
            return null;
        }

        if (int.TryParse(text, NumberStyles.None, CultureInfo.InvariantCulture, out int number) && number >= least && number <= most)
        {
            return number;
        }

        Fault(name, string.Create(CultureInfo.InvariantCulture, $"'{text}' is not taken: a whole number from {least} to {most} is expected."));
        return null;
    }

    /// <summary>A number in a range; null where nothing was typed, or something else, which is noted.</summary>
    public double? Number(string name, double least, double most, string what)
    {
        string text = Text(name);
        if (text.Length == 0)
        {
            return null;
        }

        if (double.TryParse(text, NumberStyles.Float, CultureInfo.InvariantCulture, out double number) && number >= least && number <= most)
        {
            return number;
        }

        Fault(name, string.Create(CultureInfo.InvariantCulture, $"'{text}' is not taken: {what} from {least:0.####} to {most:0.####} is expected{Comma(text)}."));
        return null;
    }

    /// <summary>Numbers divided by spaces, or null where one of them is none.</summary>
    public IReadOnlyList<double>? Numbers(string name)
    {
        var numbers = new List<double>();
        foreach (string word in Text(name).Split([' ', ';'], StringSplitOptions.RemoveEmptyEntries))
        {
            if (!double.TryParse(word, NumberStyles.Float, CultureInfo.InvariantCulture, out double number) || !double.IsFinite(number))
            {
                return null;
            }

            numbers.Add(number);
        }

        return numbers;
    }

    /// <summary>What to do where a comma stands for the point.</summary>
    public static string Comma(string text) => text.Contains(',', StringComparison.Ordinal) ? " (write a full stop, not a comma)" : "";
}
