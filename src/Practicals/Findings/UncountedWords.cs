using Calx.Practicals.Readings;
using Calx.Practicals.Texts;

namespace Calx.Practicals.Findings;

/// <summary>Says which groups stand in no result of a class, and why: a table without them must not read as if they were not there.</summary>
public static class UncountedWords
{
    /// <summary>A sentence for all with simulated readings, and one for each that uses another's.</summary>
    /// <param name="uncounted">The groups, in the order in which they are to be named.</param>
    /// <param name="language">The language; British where nothing else is said.</param>
    public static IReadOnlyList<string> Of(IReadOnlyList<UncountedGroup> uncounted, EngineLanguage? language = null)
    {
        ArgumentNullException.ThrowIfNull(uncounted);
        return [.. Both(uncounted, language ?? EngineLanguage.British).Select(s => s.Text)];
    }

    /// <summary>The same as sentences of a class's conclusion.</summary>
    internal static IEnumerable<ConclusionSentence> Sentences(IReadOnlyList<UncountedGroup> uncounted, EngineLanguage language) =>
        Both(uncounted, language).Select(s => new ConclusionSentence(ConclusionTopic.Uncounted, s.Text, s.WithoutNames));

    private static IEnumerable<(string Text, string WithoutNames)> Both(IReadOnlyList<UncountedGroup> uncounted, EngineLanguage language)
    {
        var texts = new ConclusionTexts(language);
        var wording = new Wording(language);
        string[] simulated = [.. uncounted.OfType<UncountedGroup.Simulated>().Select(g => g.Name)];
        if (simulated.Length > 0)
        {
            yield return (GoOn(simulated, texts, wording), simulated.All(IsNumber) ? GoOn(simulated, texts, wording)
                : simulated.Length == 1 ? texts.OneGoesOn : texts.SomeGoOn(simulated.Length.InFigures()));
        }

        foreach (UncountedGroup.Joined joined in uncounted.OfType<UncountedGroup.Joined>())
        {
            string other = wording.Group(joined.Other);
            string unnamed = IsNumber(joined.Other) ? other : texts.AnotherGroup;
            // A number gives nobody's name away.
            yield return IsNumber(joined.Name)
                ? (texts.NumberUses(joined.Name, other), texts.NumberUses(joined.Name, unnamed))
                : (texts.NameUses(joined.Name, other), texts.OneUses(unnamed));
        }
    }

    private static string GoOn(string[] names, ConclusionTexts texts, Wording wording) => (names.Length == 1, names.All(IsNumber)) switch
    {
        (true, true) => texts.NumberGoesOn(names[0]),
        (true, false) => texts.NameGoesOn(names[0]),
        (false, true) => texts.NumbersGoOn(wording.And(names)),
        _ => texts.NamesGoOn(wording.And(names)),
    };

    private static bool IsNumber(string name) => name.All(char.IsAsciiDigit);
}
