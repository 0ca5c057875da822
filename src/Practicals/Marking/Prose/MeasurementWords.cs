using System.Text.RegularExpressions;
using Calx.Practicals.Definition;

namespace Calx.Practicals.Marking.Prose;

/// <summary>
/// Finds the words of measurement in an answer, and those that probably say something else than is meant (JCGM 200:2012 for the terms). It marks nothing:
/// it saves the teacher's eyes.
/// </summary>
/// <param name="words">Words of this practical beside the general ones, as on its sheet.</param>
public sealed partial class MeasurementWords(IReadOnlyList<string> words)
{
    /// <summary>Longer answers are looked at up to here.</summary>
    public const int LongestText = 4000;

    private readonly Regex[] own = [.. words.Select(w => new Regex($@"(?i)\b{Regex.Escape(w)}\b", RegexOptions.CultureInvariant))];

    /// <summary>Takes the words of a practical's sheet.</summary>
    public static MeasurementWords Of(Practical practical)
    {
        ArgumentNullException.ThrowIfNull(practical);
        return new MeasurementWords(practical.Sheet.Words);
    }

    /// <summary>The words in a text, none overlapping another, in the order in which they stand.</summary>
    /// <param name="text">The answer as written.</param>
    public IReadOnlyList<WordUse> In(string text)
    {
        ArgumentNullException.ThrowIfNull(text);
        string read = text.Length <= LongestText ? text : text[..LongestText];
        WordUse[] misused = [.. Sentences(read).SelectMany(s => MisusedWords.In(read[s.Start..s.End]).Select(w => w with { Start = w.Start + s.Start }))];
        IEnumerable<WordUse> found = own.Append(Terms()).SelectMany(r => r.Matches(read)).Select(m => new WordUse(m.Index, m.Length, false, null));
        var kept = new List<WordUse>();
        // A misused word is more worth pointing out than a found one, and a longer term than a word in it.
        foreach (WordUse use in misused.Concat(found.OrderByDescending(f => f.Length)))
        {
            if (kept.TrueForAll(k => use.Start >= k.Start + k.Length || k.Start >= use.Start + use.Length))
            {
                kept.Add(use);
            }
        }

        return [.. kept.OrderBy(k => k.Start)];
    }

    private static IEnumerable<(int Start, int End)> Sentences(string text)
    {
        int start = 0;
        foreach (Match end in SentenceEnd().Matches(text))
        {
            yield return (start, end.Index + 1);
            start = end.Index + 1;
        }

        if (start < text.Length)
        {
            yield return (start, text.Length);
        }
    }

    // A full stop within a number ends nothing.
    [GeneratedRegex(@"[.!?\n](?!\d)", RegexOptions.CultureInvariant)]
    private static partial Regex SentenceEnd();

    [GeneratedRegex(
        @"(?i)\b(accura(te|cy|tely)|precis(e|ion|ely)|repeatab(le|ility)|reproducib(le|ility)|resolution|uncertain(ty)?|systematic( error)?|random( error)?|zero error|anomal(ous|y|ies)( results?)?|odd result|true value|accepted value|mean|median|range|mass(es)?|conserved|constant mass|limiting reagent|(percentage )?yield|errors?|valid(ity)?|fair test|readings?|divisions?|percentage (error|uncertainty))\b",
        RegexOptions.CultureInvariant)]
    private static partial Regex Terms();
}
