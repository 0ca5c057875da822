using Calx.App.Pages;

namespace Calx.App.Learning;

/// <summary>From where learned numbers are, in a few words.</summary>
public static class LearnedText
{
    /// <summary>The words.</summary>
    public static string Of(AcceptedNumbers learned) =>
        $"{What(learned)} learned from {Lessons(learned.Lessons)}, accepted on {Dates.Day(learned.AcceptedOn)}{(learned.Class.Length > 0 ? $", for {learned.Class}" : "")}";

    /// <summary>The same at the beginning of a sentence.</summary>
    public static string Capital(AcceptedNumbers learned) => Of(learned) is { } text ? char.ToUpperInvariant(text[0]) + text[1..] : "";

    /// <summary>How many lessons, in words that a sentence takes.</summary>
    public static string Lessons(int lessons) => lessons == 1 ? "one lesson" : FormattableString.Invariant($"{lessons} lessons");

    private static string What(AcceptedNumbers learned) => (learned.Times.Count > 0, learned.Rates.Count + learned.Breaks.Count > 0) switch
    {
        (true, false) => "times",
        (false, _) => "rates",
        _ => "times and rates",
    };
}
