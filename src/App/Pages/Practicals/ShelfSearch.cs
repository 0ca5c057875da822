using System.Globalization;
using Calx.App.Output;
using Calx.Practicals.Choosing;
using Calx.Practicals.Definition;
using Microsoft.AspNetCore.Http;

namespace Calx.App.Pages.Practicals;

/// <summary>What was filled in above the list of practicals, as typed and as understood.</summary>
public sealed class ShelfSearch
{
    private const double LongestLesson = 600;

    private const double CoarsestStep = 10;

    private const int LongestWords = 100;

    private readonly Dictionary<string, string> faults = new(StringComparer.Ordinal);

    private ShelfSearch(IQueryCollection query)
    {
        Happens = Text(query, "happens");
        Minutes = Text(query, "minutes");
        Step = Text(query, "step");
        About = Text(query, "about");
        PracticalFamily? family = null;
        if (Happens.Length > 0 && ShelfWords.Unknown(Happens) is null)
        {
            family = PracticalFamilies.Words[Happens];
        }

        Wish = new ShelfWish
        {
            Family = family,
            Minutes = Number("minutes", Minutes, LongestLesson),
            StepInGrams = Number("step", Step, CoarsestStep),
            NoFlame = Text(query, "noflame").Length > 0,
            NoFumeCupboard = Text(query, "nofumes").Length > 0,
            DemonstrationOnly = Text(query, "demonstration").Length > 0,
            Words = About.Split((char[]?)null, StringSplitOptions.RemoveEmptyEntries),
        };
    }

    /// <summary>The word of what happens; empty for anything.</summary>
    public string Happens { get; }

    /// <summary>The minutes as typed.</summary>
    public string Minutes { get; }

    /// <summary>The balance's step as chosen.</summary>
    public string Step { get; }

    /// <summary>The words as typed.</summary>
    public string About { get; }

    /// <summary>What is looked for.</summary>
    public ShelfWish Wish { get; }

    /// <summary>Whether something is asked of room, time or balances, so that those fields are to be seen.</summary>
    public bool AsksNeeds => Wish is not { Minutes: null, StepInGrams: null, NoFlame: false, NoFumeCupboard: false, DemonstrationOnly: false } || faults.Count > 0;

    /// <summary>What is wrong with a field; empty for nothing.</summary>
    public string FaultOf(string field) => faults.GetValueOrDefault(field, "");

    /// <summary>What an address says.</summary>
    public static ShelfSearch Of(IQueryCollection query)
    {
        ArgumentNullException.ThrowIfNull(query);
        return new ShelfSearch(query);
    }

    private static string Text(IQueryCollection query, string key) => query[key].ToString().Trim() is var text && text.Length > LongestWords ? text[..LongestWords] : text;

    private double? Number(string field, string text, double most)
    {
        if (text.Length == 0)
        {
            return null;
        }

        if (double.TryParse(text, NumberStyles.AllowDecimalPoint, CultureInfo.InvariantCulture, out double number) && number > 0 && number <= most)
        {
            return number;
        }

        faults[field] = string.Create(CultureInfo.InvariantCulture, $"'{text}' is not taken: a number above 0, {most} at most, was expected{Input.NumberOption.CommaHint(text)}.");
        return null;
    }
}
