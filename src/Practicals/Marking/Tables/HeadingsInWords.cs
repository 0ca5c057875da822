using System.Text.RegularExpressions;
using Calx.Practicals.Definition;
using Calx.Practicals.Readings;

namespace Calx.Practicals.Marking.Tables;

/// <summary>Headings of answers as teachers write them: formulas for names, and a word for a judgement.</summary>
internal static partial class HeadingsInWords
{
    /// <summary>Longer headings are whole questions; they are matched as they are or not at all.</summary>
    private const int Longest = 60;

    /// <summary>The id of the answer that a heading means, or null where it means none or several.</summary>
    public static string? Meant(string heading, Practical practical)
    {
        if (heading.Length > Longest || heading.Trim().Length == 0)
        {
            return null;
        }

        string spelt = Spelt(HeadingUnit.Split(heading).Text, practical);
        string[] values = [.. practical.AllAnswers.Where(a => Spelt(a.Label, practical) == spelt).Select(a => a.Id)];
        bool isWeighing = heading.Contains("mass", StringComparison.OrdinalIgnoreCase) && !heading.Contains("constant", StringComparison.OrdinalIgnoreCase);
        string[] judgements = values.Length > 0 || isWeighing ? values : [.. practical.FurtherAnswers.OfType<JudgementAnswer>().Where(j => WordOf(j).IsMatch(heading)).Select(j => j.Id)];
        return judgements.Length == 1 ? judgements[0] : null;
    }

    /// <summary>The words in order, without those that say nothing, each formula as the substance or element that it stands for.</summary>
    private static string Spelt(string text, Practical practical)
    {
        var names = practical.Materials.Where(m => m.Formula is not null).GroupBy(m => m.Formula!.ToString()).ToDictionary(g => g.Key.ToLowerInvariant(), g => g.First().Label.ToLowerInvariant(), StringComparer.Ordinal);
        names["o"] = names["o2"] = "oxygen";
        return string.Join(' ', Word().Matches(text.ToLowerInvariant()).Select(m => m.Value).Select(w => names.GetValueOrDefault(w, w))
            .SelectMany(w => w.Split(' ')).Where(w => w is not ("of" or "the" or "in" or "atoms" or "air" or "driven" or "off" or "amount")).Select(w => w == "mole" || w == "mol" || w == "n" ? "moles" : w == "m" ? "mass" : w));
    }

    private static Regex WordOf(JudgementAnswer answer) => answer switch
    {
        JudgementAnswer.OfFormula => Formula(),
        JudgementAnswer.OfCompleteness => Complete(),
        JudgementAnswer.OfOddGroup => Odd(),
        JudgementAnswer.OfCause => Cause(),
        _ => Improvement(),
    };

    [GeneratedRegex(@"[\p{L}\d]+", RegexOptions.CultureInvariant)]
    private static partial Regex Word();

    [GeneratedRegex(@"(?i)\bformula\b", RegexOptions.CultureInvariant)]
    private static partial Regex Formula();

    [GeneratedRegex(@"(?i)\bcomplete\b|\bconstant mass\b|\bfinished\b", RegexOptions.CultureInvariant)]
    private static partial Regex Complete();

    [GeneratedRegex(@"(?i)\b(odd|anomal\w+)\b", RegexOptions.CultureInvariant)]
    private static partial Regex Odd();

    [GeneratedRegex(@"(?i)\bcauses?\b", RegexOptions.CultureInvariant)]
    private static partial Regex Cause();

    [GeneratedRegex(@"(?i)\bimprove\w*\b", RegexOptions.CultureInvariant)]
    private static partial Regex Improvement();
}
