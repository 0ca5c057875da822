using System.Globalization;
using Calx.Practicals.Definition;

namespace Calx.Practicals.Drafting;

/// <summary>The answers to a draft's questions as typed, read one by one; what is wrong with each is noted for it.</summary>
internal sealed class DraftWords(IReadOnlyList<DraftQuestion> questions, IReadOnlyDictionary<string, string> typed)
{
    /// <summary>Longest answer in characters.</summary>
    public const int Longest = 200;

    private readonly Dictionary<string, string> faults = new(StringComparer.Ordinal);

    private readonly Dictionary<string, string> offers = new(StringComparer.Ordinal);

    /// <summary>The questions, each with what is taken now where it is not answered.</summary>
    public IReadOnlyList<DraftQuestion> Questions => [.. questions.Select(q => offers.TryGetValue(q.Key, out string? usual) ? q with { Default = usual } : q)];

    /// <summary>What is wrong, by question.</summary>
    public IReadOnlyDictionary<string, string> Faults => faults;

    /// <summary>The answer, or the default where nothing was answered.</summary>
    public string this[string key] => Typed(key) is { Length: > 0 } said ? said
        : offers.GetValueOrDefault(key) ?? questions.FirstOrDefault(q => q.Key == key)?.Default ?? "";

    /// <summary>The answer as typed; empty where nothing was.</summary>
    public string Typed(string key) => typed.TryGetValue(key, out string? text) ? text.Trim() : "";

    /// <summary>Takes another default for a question that is not answered; one that is too long is cut.</summary>
    public void Offer(string key, string usual)
    {
        if (Typed(key).Length == 0)
        {
            offers[key] = usual.Length > Longest ? usual[..Longest].TrimEnd() : usual;
        }
    }

    /// <summary>Notes a fault; the first of a question stands.</summary>
    public void Fault(string key, string sentence) => faults.TryAdd(key, sentence);

    /// <summary>A text of some length on one line.</summary>
    public string Text(string key)
    {
        string text = this[key];
        if (key is not ("title" or "question") && text.AsSpan().IndexOfAny('{', '}') >= 0)
        {
            Fault(key, "curly brackets stand for something else in a sheet; leave them out");
            return "?";
        }

        if (text.Length > Longest || text.Any(char.IsControl))
        {
            Fault(key, string.Create(CultureInfo.InvariantCulture, $"a text of 1 to {Longest} characters on one line is expected"));
            return "?";
        }

        return text;
    }

    /// <summary>The name of a substance: as answered, its default for the example's own substance, and else its formula.</summary>
    public string NameOf(string key, string formula) => Typed(key).Length > 0 ? Text(key) : Typed("equation").Length == 0 ? this[key] : formula;

    /// <summary>Yes or no.</summary>
    public bool Yes(string key)
    {
        string word = this[key].ToLowerInvariant();
        if (word is not ("yes" or "y" or "no" or "n"))
        {
            Fault(key, $"'{word}' is not understood; expected yes or no");
        }

        return word is "yes" or "y";
    }

    /// <summary>A number in a range.</summary>
    public double Number(string key, double least, double most) => NumberOf(key, this[key], least, most);

    /// <summary>A whole number in a range.</summary>
    public int Whole(string key, int least, int most)
    {
        if (int.TryParse(this[key], NumberStyles.None, CultureInfo.InvariantCulture, out int number) && number >= least && number <= most)
        {
            return number;
        }

        Fault(key, string.Create(CultureInfo.InvariantCulture, $"'{this[key]}' is not taken; a whole number from {least} to {most} is expected"));
        return least;
    }

    /// <summary>Least, likely and most minutes, as YAML has them. Two are the least and the most; one alone is the likely one.</summary>
    public string Minutes(string key)
    {
        string[] words = this[key].Split([' ', ',', ';'], StringSplitOptions.RemoveEmptyEntries);
        double[] minutes = [.. words.Select(w => double.TryParse(w, NumberStyles.AllowDecimalPoint, CultureInfo.InvariantCulture, out double m) && m <= 600 ? m : -1)];
        minutes = minutes switch
        {
            [> 0 and double likely] => GuessedMinutes.About(likely),
            [> 0 and double least, double most] when most > least => GuessedMinutes.Between(least, most),
            _ => minutes,
        };
        if (minutes.Length == 3 && minutes[0] > 0 && minutes[0] <= minutes[1] && minutes[1] <= minutes[2] && minutes[0] < minutes[2])
        {
            return $"[{string.Join(", ", minutes.Select(Plain))}]";
        }

        Fault(key, $"'{this[key]}' is not taken; least, likely and most minutes are expected, such as 3 5 9, or one number, such as 5, for the likely ones");
        return "[1, 2, 3]";
    }

    /// <summary>A number as YAML has it.</summary>
    public static string Plain(double number) => number.ToString("0.######", CultureInfo.InvariantCulture);

    private double NumberOf(string key, string text, double least, double most)
    {
        if (double.TryParse(text, NumberStyles.AllowDecimalPoint, CultureInfo.InvariantCulture, out double number) && number >= least && number <= most)
        {
            return number;
        }

        string comma = text.Contains(',', StringComparison.Ordinal) ? " (write a full stop, not a comma)" : "";
        Fault(key, string.Create(CultureInfo.InvariantCulture, $"'{text}' is not taken; a number from {least:0.####} to {most:0.####} is expected{comma}"));
        return least;
    }
}
