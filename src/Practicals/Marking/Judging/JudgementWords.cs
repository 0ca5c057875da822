using System.Text.RegularExpressions;

namespace Calx.Practicals.Marking.Judging;

/// <summary>What students write in words where a choice was asked for: enough of it to be sure, or nothing.</summary>
internal static partial class JudgementWords
{
    /// <summary>Share of the words that has to stand in a choice, and how many at the least. Judgement.</summary>
    private const double Share = 0.75;
    private const int Fewest = 2;

    private static readonly string[] Empty =
        ["the", "a", "an", "of", "was", "were", "is", "had", "has", "have", "been", "it", "that", "this", "to", "in", "as", "or", "and", "my", "our", "some", "at", "so", "on", "by", "with", "from", "because", "there"];

    /// <summary>The choice that a sentence about completeness means, or null.</summary>
    public static string? Completeness(string given)
    {
        string text = given.Trim().ToLowerInvariant().Replace('’', '\'');
        return CannotTell().IsMatch(text) ? JudgementChoices.CannotTell
            : Negative().IsMatch(text) ? JudgementChoices.NotComplete
            : Affirmative().IsMatch(text) ? JudgementChoices.Complete
            : null;
    }

    /// <summary>The choice with nearly all words of the answer in it, or null where there is none or more than one.</summary>
    public static string? Chosen(IReadOnlyList<Choice> choices, string given)
    {
        HashSet<string> said = WordsOf(given);
        if (said.Count < Fewest)
        {
            return null;
        }

        (string Id, double Share)[] found =
        [
            .. choices.Select(c => (c.Id, (double)said.Count(WordsOf(c.Label).Contains) / said.Count)).Where(c => c.Item2 >= Share).OrderByDescending(c => c.Item2),
        ];
        return found.Length == 1 || (found.Length > 1 && found[0].Share > found[1].Share) ? found[0].Id : null;
    }

    private static HashSet<string> WordsOf(string text) =>
        [.. Word().Matches(text.ToLowerInvariant()).Select(m => m.Value).Where(w => !Empty.Contains(w)).Select(w => w.Length > 4 ? w.TrimEnd('s') : w)];

    [GeneratedRegex(@"\p{L}+", RegexOptions.CultureInvariant)]
    private static partial Regex Word();

    [GeneratedRegex(@"^(cannot|can't|can not|could not|couldn't|impossible)\b|\b(cannot|can't|can not|not possible to) (tell|say|know)\b", RegexOptions.CultureInvariant)]
    private static partial Regex CannotTell();

    [GeneratedRegex(@"^(no|n)\b|\b(not|n't) (yet )?(complete|finished|all|constant|done)\b|\bincomplete\b|\bunfinished\b", RegexOptions.CultureInvariant)]
    private static partial Regex Negative();

    [GeneratedRegex(@"^(yes|y)\b|\bcomplete\b|\bfinished\b|\bconstant mass\b", RegexOptions.CultureInvariant)]
    private static partial Regex Affirmative();
}
