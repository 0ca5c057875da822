using System.Text.RegularExpressions;
using Calx.Practicals.Texts;

namespace Calx.Practicals.Marking.Prose;

/// <summary>Words that probably say something else than is meant, each with what to say of it. Usage as in school guidance on the language of measurement;
/// common practice, no source.</summary>
internal static partial class MisusedWords
{
    /// <summary>Marks are not given a language yet; who hands one on begins here.</summary>
    private static readonly MisusedWordTexts Texts = new(EngineLanguage.British);

    private static readonly Rule[] Rules =
    [
        new(Weight(), null, null, Texts.Weight),
        new(Reliable(), null, null, Texts.Reliable),
        new(HumanError(), null, null, Texts.HumanError),
        new(AccuracyNumber(), null, null, Texts.AccuracyNumber),
        new(VeryAccurate(), null, null, Texts.VeryAccurate),
        new(Accurate(), Decimals(), null, Texts.Accurate),
        new(Precise(), TrueOne(), null, Texts.Precise),
        new(Average(), Cures(), null, Texts.Average),
        new(TrueValue(), Book(), null, Texts.TrueValue),
        new(ErrorMade(), null, null, Texts.ErrorMade),
        new(Proves(), null, null, Texts.Proves),
        new(Anomaly(), LeftOut(), Because(), Texts.Anomaly),
        new(GasHasNoMass(), null, null, Texts.GasHasNoMass),
        new(HeatAsMass(), null, null, Texts.HeatAsMass),
        new(Swelled(), Heavier(), null, Texts.Swelled),
    ];

    /// <summary>The misused words of one sentence; positions in the sentence.</summary>
    public static IEnumerable<WordUse> In(string sentence) =>
        from rule in Rules
        where (rule.Beside is null || rule.Beside.IsMatch(sentence)) && rule.Unless?.IsMatch(sentence) != true
        from match in rule.Word.Matches(sentence)
        select new WordUse(match.Index, match.Length, true, rule.Advice);

    /// <param name="Word">The word.</param>
    /// <param name="Beside">What has to stand in the same sentence, or null.</param>
    /// <param name="Unless">What must not, or null.</param>
    /// <param name="Advice">What to say of it.</param>
    private sealed record Rule(Regex Word, Regex? Beside, Regex? Unless, string Advice);

    [GeneratedRegex(@"(?i)\bweights?\b(?!\s*(loss)?\s*(is|=)?\s*\d+(\.\d+)?\s*N\b)", RegexOptions.CultureInvariant)]
    private static partial Regex Weight();

    [GeneratedRegex(@"(?i)\b(un)?reliab(le|ly|ility)\b(?!\s+(source|website))", RegexOptions.CultureInvariant)]
    private static partial Regex Reliable();

    [GeneratedRegex(@"(?i)\bhuman\s+errors?\b", RegexOptions.CultureInvariant)]
    private static partial Regex HumanError();

    [GeneratedRegex(@"(?i)\baccura(cy|te)\s+(is|was|of|to|=|within)\s*[±+/-]*\s*\d[\d.,]*\s*m?g\b", RegexOptions.CultureInvariant)]
    private static partial Regex AccuracyNumber();

    [GeneratedRegex(@"(?i)\b(very|highly|really|extremely|totally|completely|perfectly|100\s?%)\s+accurate(ly)?\b", RegexOptions.CultureInvariant)]
    private static partial Regex VeryAccurate();

    [GeneratedRegex(@"(?i)\b(in)?accura(te|cy|tely)\b", RegexOptions.CultureInvariant)]
    private static partial Regex Accurate();

    [GeneratedRegex(@"(?i)\bdecimals?\b|\bdigits?\b|\bd\.?\s?p\.?\b|\bfigures\b", RegexOptions.CultureInvariant)]
    private static partial Regex Decimals();

    [GeneratedRegex(@"(?i)\b(im)?precis(e|ion|ely)\b", RegexOptions.CultureInvariant)]
    private static partial Regex Precise();

    [GeneratedRegex(@"(?i)\b(true|accepted|correct|right|real|actual|expected|theoretical)\s+(value|answer|ratio|one|result)\b|\bbook\b", RegexOptions.CultureInvariant)]
    private static partial Regex TrueOne();

    [GeneratedRegex(@"(?i)\b(average|averaging|mean)\b", RegexOptions.CultureInvariant)]
    private static partial Regex Average();

    [GeneratedRegex(@"(?i)\b(cancel|remov|cure|fix|correct|get rid|gets rid|even|solve)\w*\b.*\b(bias|smoke|lost|loss|systematic|errors?|mistakes?)\b|\b(bias|smoke|lost|loss|systematic|errors?|mistakes?)\b.*\b(cancel|remov|cure|fix|disappear|even|go away)\w*\b", RegexOptions.CultureInvariant)]
    private static partial Regex Cures();

    [GeneratedRegex(@"(?i)\btrue\s+(value|ratio|formula)\b", RegexOptions.CultureInvariant)]
    private static partial Regex TrueValue();

    [GeneratedRegex(@"(?i)\b(text)?book\b|\btable\b|\bperiodic\b", RegexOptions.CultureInvariant)]
    private static partial Regex Book();

    [GeneratedRegex(@"(?i)\b(made|make|did|my|our|an?)\s+(an?\s+|some\s+|few\s+)?errors?\s+(when|in|while|by|reading|copying|writing)\b", RegexOptions.CultureInvariant)]
    private static partial Regex ErrorMade();

    [GeneratedRegex(@"(?i)\bprov(e|es|ed|en|ing)\b|\bproof\b", RegexOptions.CultureInvariant)]
    private static partial Regex Proves();

    [GeneratedRegex(@"(?i)\banomal(y|ies|ous)\b(\s+results?\b)?|\bodd\s+results?\b|\boutliers?\b", RegexOptions.CultureInvariant)]
    private static partial Regex Anomaly();

    [GeneratedRegex(@"(?i)\b((left|leave|leaving|took|take|cross\w*)\s+(\w+\s+){0,2}out|ignor\w+|delet\w+|remov\w+|not\s+count\w*|throw\w*|threw|discard\w*)\b", RegexOptions.CultureInvariant)]
    private static partial Regex LeftOut();

    [GeneratedRegex(@"(?i)\b(because|since|as\s+the|reason|due\s+to|for\s+the)\b", RegexOptions.CultureInvariant)]
    private static partial Regex Because();

    [GeneratedRegex(@"(?i)\b(gas(es)?|air|oxygen|smoke|steam)\s+(has|have|had|weighs?|weighed)\s+(no|nothing|zero)\b", RegexOptions.CultureInvariant)]
    private static partial Regex GasHasNoMass();

    [GeneratedRegex(@"(?i)\bheat(ing)?\s+(has|had|adds|added|gives|gave|weighs)\s+(it\s+|some\s+|more\s+)?(mass|weight)\b|\bmass\s+of\s+(the\s+)?heat\b", RegexOptions.CultureInvariant)]
    private static partial Regex HeatAsMass();

    [GeneratedRegex(@"(?i)\b(swell(s|ed)?|swollen|expand(s|ed)?|got\s+bigger|gets\s+bigger)\b", RegexOptions.CultureInvariant)]
    private static partial Regex Swelled();

    [GeneratedRegex(@"(?i)\b(mass|heavier|weigh\w*|gain\w*)\b", RegexOptions.CultureInvariant)]
    private static partial Regex Heavier();
}
