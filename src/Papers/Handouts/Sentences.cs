using System.Globalization;
using Calx.Papers.Texts;
using Calx.Practicals.Definition;

namespace Calx.Papers.Handouts;

/// <summary>Small matters of wording that papers share.</summary>
internal static class Sentences
{
    /// <summary>A heading of a quantity: its name and unit as quantity / unit (ISO 80000-1); the name alone where it has none.</summary>
    public static string Heading(string label, string unit) => unit == "1" ? label : $"{label}\u00a0/\u00a0{unit}";

    /// <summary>A mass to weigh out, in g, with a trailing zero where the balance shows it.</summary>
    public static string Mass(double grams, int decimals) => grams.ToString($"F{Math.Clamp(decimals, 0, 6)}", CultureInfo.InvariantCulture) + "\u00a0g";

    /// <summary>A whole number in digits.</summary>
    public static string Count(int number) => number.ToString(CultureInfo.InvariantCulture);

    /// <summary>How far a statement of a practical can be trusted, in words.</summary>
    public static string Of(Standing standing, PaperLanguage language)
    {
        SharedTexts texts = new(language);
        return standing switch
        {
            Standing.CommonPractice => texts.StandingCommonPractice,
            Standing.Literature => texts.StandingLiterature,
            Standing.Memory => texts.StandingMemory,
            Standing.Computed => texts.StandingComputed,
            _ => texts.StandingJudgement,
        };
    }

    /// <summary>Alternatives in a row, with 'or' between.</summary>
    public static string Or(IReadOnlyList<string> things, PaperLanguage language) => string.Join($" {new SharedTexts(language).Or} ", things);

    /// <summary>Things in a row, the last two joined by 'and'.</summary>
    public static string And(IReadOnlyList<string> things, PaperLanguage language) => things.Count switch
    {
        0 => string.Empty,
        1 => things[0],
        _ => new SharedTexts(language).And(string.Join(", ", things.Take(things.Count - 1)), things[^1]),
    };
}
