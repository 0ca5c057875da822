using System.Globalization;
using Calx.Measurement.Numbers;
using Calx.Practicals.Choosing;
using Calx.Practicals.Definition;

namespace Calx.App.Output;

/// <summary>What is said of a practical where one is chosen: what happens in it, and what it needs.</summary>
internal static class ShelfWords
{
    /// <summary>The families with what they are called, in the order in which they are offered.</summary>
    public static IReadOnlyList<(PracticalFamily Family, string Word, string Label)> Families { get; } =
        [.. PracticalFamilies.Words.Select(w => (w.Value, w.Key, LabelOf(w.Value)))];

    /// <summary>What a family is called.</summary>
    public static string LabelOf(PracticalFamily family) => family switch
    {
        PracticalFamily.Gains => "gains mass on heating",
        PracticalFamily.Loses => "loses mass on heating",
        PracticalFamily.GasLeaves => "mixed, and a gas leaves",
        PracticalFamily.Same => "nothing changes",
        PracticalFamily.OverTime => "mass against time",
        PracticalFamily.Product => "a product is weighed",
        PracticalFamily.Analysed => "a sample is analysed",
        PracticalFamily.OtherReadings => "temperature, time or current too",
        _ => throw new System.Diagnostics.UnreachableException(),
    };

    /// <summary>Short facts of a practical, each by itself.</summary>
    public static IReadOnlyList<string> Of(PracticalFacts facts) =>
    [
        LabelOf(facts.Family),
        Minutes(facts.Minutes),
        BalanceOf(facts),
        .. facts.HasFlame ? ["naked flame"] : Array.Empty<string>(),
        .. facts.NeedsFumeCupboard ? ["fume cupboard"] : Array.Empty<string>(),
        .. facts.IsDemonstration ? ["demonstration only"] : Array.Empty<string>(),
    ];

    /// <summary>The word of a family that somebody wrote, or why it is none.</summary>
    public static string? Unknown(string word)
    {
        string[] known = [.. PracticalFamilies.Words.Keys];
        return PracticalFamilies.Words.ContainsKey(word) ? null
            : $"'{word}' is nothing that happens here; expected {string.Join(", ", known)}{(Slips.Nearest(word, known) is string near ? $"; did you mean {near}?" : "")}";
    }

    private static string Minutes(LessonMinutes minutes)
    {
        string whole = minutes.Whole.ToString("0", CultureInfo.InvariantCulture), shortest = minutes.Shortest.ToString("0", CultureInfo.InvariantCulture);
        return whole == shortest ? $"about {whole} min" : $"about {whole} min, {shortest} at the shortest";
    }

    private static string BalanceOf(PracticalFacts facts)
    {
        string? change = facts.ChangeInGrams is double grams ? $"{grams.ToString("G2", CultureInfo.InvariantCulture)} g of change" : null;
        string balance = facts.CoarsestStepInGrams is double step ? $"balance of {Decade(step).ToString("0.######", CultureInfo.InvariantCulture)} g or finer" : "any balance";
        return change is null ? balance : $"{change}: {balance}";
    }

    /// <summary>The coarsest common balance that is fine enough: 1, 0.1, 0.01 g and so on.</summary>
    private static double Decade(double step) => Math.Pow(10, Math.Floor(Math.Log10(step * (1 + 1e-9))));
}
