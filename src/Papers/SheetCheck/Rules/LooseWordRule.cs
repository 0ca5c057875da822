using System.Text.RegularExpressions;
using Calx.Papers.Texts;

namespace Calx.Papers.SheetCheck.Rules;

/// <summary>Words about data that say nothing that could be shown: reliable, very accurate, human error, an accuracy with a number.</summary>
internal static partial class LooseWordRule
{
    /// <summary>Characters before a word in which a warning against it is looked for.</summary>
    private const int Looked = 120;

    public static IEnumerable<SheetFinding> Of(CheckedSheet it) =>
        from paragraph in it.Sheet.Paragraphs
        from found in Known(it.Texts).SelectMany(k => k.Words.Matches(paragraph.Text).Select(m => (Match: m, Known: k))).OrderBy(f => f.Match.Index)
        where !Advises().IsMatch(paragraph.Text[Math.Max(0, found.Match.Index - Looked)..found.Match.Index])
        select new SheetFinding(
            "loose-word", paragraph.Place.At(found.Match.Index, it.Language), Quoted.Around(paragraph.Text, found.Match.Index, found.Match.Length),
            it.Texts.LooseWord(Quoted.Whole(found.Match.Value), found.Known.Problem), found.Known.Expected);

    private static (Regex Words, string Problem, string Expected)[] Known(SheetCheckTexts texts) =>
    [
        (Reliable(), texts.ReliableProblem, texts.ReliableExpected),
        (VeryAccurate(), texts.VeryAccurateProblem, texts.VeryAccurateExpected),
        (AccuracyNumber(), texts.AccuracyProblem, texts.AccuracyExpected),
        (HumanError(), texts.HumanErrorProblem, texts.HumanErrorExpected),
    ];

    // 'Do not write human error': the sheet says the same.
    [GeneratedRegex(@"(?i)\b(not|never|don['’]t|avoid|instead of|rather than|without|no)\b[^.!?]*$", RegexOptions.CultureInvariant)]
    private static partial Regex Advises();

    [GeneratedRegex(@"(?i)\b(un)?reliab(le|ly|ility)\b(?!\s+(source|website))", RegexOptions.CultureInvariant)]
    private static partial Regex Reliable();

    [GeneratedRegex(@"(?i)\b(very|highly|really|extremely|totally|completely|perfectly|100\s?%|more|most|as)\s+accurate(ly)?\b", RegexOptions.CultureInvariant)]
    private static partial Regex VeryAccurate();

    [GeneratedRegex(@"(?i)\baccura(cy|te)\s+(is|of|to|=|within)\s*[±+/-]*\s*\d[\d.,]*\s*m?g\b", RegexOptions.CultureInvariant)]
    private static partial Regex AccuracyNumber();

    [GeneratedRegex(@"(?i)\bhuman\s+errors?\b", RegexOptions.CultureInvariant)]
    private static partial Regex HumanError();
}
