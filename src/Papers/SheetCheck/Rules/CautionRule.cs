using System.Text.RegularExpressions;
using Calx.Practicals.Definition;

namespace Calx.Papers.SheetCheck.Rules;

/// <summary>
/// The practical's hazards each have a caution: eye protection, hot things, and every material that the practical calls hazardous. A caution
/// is a sentence that warns or stands under a heading of safety, and has two words of the hazard, or one and the material.
/// </summary>
internal static partial class CautionRule
{
    private static readonly HashSet<string> Common = new(
        ("the and with not that this from its who what into until where when like one all any are can too than for out them while more was made above "
            + "part thing use used again small about crucible lid heat heated heating start end time room usual amount less third full eye protection throughout").Split(' '),
        StringComparer.Ordinal);

    private static readonly HashSet<string> Qualifying = new("hydrated anhydrous with one water left powder crystal crystals ribbon film solid copper(ii)".Split(' '), StringComparer.Ordinal);

    public static IEnumerable<SheetFinding> Of(CheckedSheet it)
    {
        string[] cautions = [.. Cautions(it.Sheet)];
        Practical practical = it.Practical;
        bool eyes = practical.Kit.Any(k => k.Need.Per == KitPer.Student && EyeWear().IsMatch(k.Label)) || practical.Hazards.Any(h => EyeWear().IsMatch(h.Control));
        if (eyes && !it.Sheet.Paragraphs.Any(p => EyeWear().IsMatch(p.Text)))
        {
            yield return Missing(it, it.Texts.EyeProtection, it.Texts.EyeProtectionExpected);
        }

        if (practical.Cooling is not null && !it.Sheet.Paragraphs.Any(p => HotThings().IsMatch(p.Text)))
        {
            Hazard? hot = practical.Hazards.FirstOrDefault(h => h.Material is null && h.Of.StartsWith("hot", StringComparison.OrdinalIgnoreCase));
            yield return Missing(it, it.Texts.HotThings, hot?.Control ?? it.Texts.HotThingsExpected);
        }

        foreach (Hazard hazard in practical.Hazards.Where(h => h.Material is not null && !NoHazard().IsMatch(h.Harm)))
        {
            if (!cautions.Any(c => IsOf(c, hazard, practical)))
            {
                yield return Missing(it, it.Texts.HazardAndHarm(hazard.Of, hazard.Harm), hazard.Control);
            }
        }
    }

    private static SheetFinding Missing(CheckedSheet it, string of, string expected) =>
        new("caution", SheetPlace.Whole.At(0, it.Language), "", it.Texts.CautionMissing(of), expected);

    /// <summary>The sentences that warn.</summary>
    private static IEnumerable<string> Cautions(Sheet sheet)
    {
        bool underSafety = false;
        foreach (SheetParagraph paragraph in sheet.Paragraphs)
        {
            underSafety = paragraph.IsHeading ? OfSafety().IsMatch(paragraph.Text) : underSafety;
            foreach (Match sentence in Sentence().Matches(paragraph.Text))
            {
                if (underSafety || Warns().IsMatch(sentence.Value))
                {
                    yield return sentence.Value;
                }
            }
        }
    }

    private static bool IsOf(string caution, Hazard hazard, Practical practical)
    {
        HashSet<string> words = [.. Stems(caution)];
        Material? material = practical.Materials.FirstOrDefault(m => m.Id == hazard.Material);
        string[] name = [.. (material?.Label ?? hazard.Of).ToLowerInvariant().Replace("(ii)", "", StringComparison.Ordinal).Split(' ').Where(w => w.Length > 2 && !Qualifying.Contains(w) && !Common.Contains(w)).Select(Stem)];
        bool isVapour = name.Contains("vapour") && words.Contains("steam");
        bool named = isVapour || (name.Length > 0 && name.All(words.Contains)) || (material?.FormulaText is string formula && caution.Contains(formula, StringComparison.Ordinal));
        int keys = Stems($"{hazard.Harm} {hazard.Control}").Where(w => !Common.Contains(w) && !name.Contains(w)).Distinct().Count(words.Contains);
        return keys >= (named ? 1 : 2);
    }

    private static IEnumerable<string> Stems(string text) => Word().Matches(text).Select(m => m.Value.ToLowerInvariant()).Where(w => !Common.Contains(w)).Select(Stem);

    // One form for 'harmful' and 'harms', 'looking' and 'look', 'irritant' and 'irritates': enough to compare, not to read.
    private static string Stem(string word)
    {
        foreach (string ending in (string[])["ingly", "ating", "ates", "ants", "ant", "ful", "ing", "ed", "es", "s", "e"])
        {
            if (word.Length - ending.Length >= 4 && word.EndsWith(ending, StringComparison.Ordinal))
            {
                return word[..^ending.Length];
            }
        }

        return word;
    }

    [GeneratedRegex(@"(?i)\beye[ -]?protection|goggles|\b(safety|eye)[ -]?(glasses|specs|spectacles|shields?|wear)\b|eyewear", RegexOptions.CultureInvariant)]
    private static partial Regex EyeWear();

    [GeneratedRegex(@"(?i)\bhot\b|\b(with|use|using|by)\b[^.]{0,30}\btongs\b|\btongs (to|every|and|for|when|whenever|only)\b|\b(not|never|don['’]t|nobody) (touch|tests?)", RegexOptions.CultureInvariant)]
    private static partial Regex HotThings();

    [GeneratedRegex(@"(?i)^(low|no|little) hazard|^nuisance", RegexOptions.CultureInvariant)]
    private static partial Regex NoHazard();

    [GeneratedRegex(@"(?i)\b(safety|safe|cautions?|take care|careful|hazards?|risks?|danger|warnings?|precautions?)\b", RegexOptions.CultureInvariant)]
    private static partial Regex OfSafety();

    [GeneratedRegex(@"(?i)\b(not|never|don['’]t|nobody|no|nothing|avoid|careful|carefully|cautions?|dangerous|danger|hazard(ous)?|warning|harmful|harms|irritant|irritat\w+|toxic|corrosive|flammable|wear|wash|rinse|keep|safety|care|stop|tell your teacher|stand back|scalds?|at once|damages?|must)\b", RegexOptions.CultureInvariant)]
    private static partial Regex Warns();

    [GeneratedRegex(@"[^.!?]+", RegexOptions.CultureInvariant)]
    private static partial Regex Sentence();

    [GeneratedRegex(@"[\p{L}]{3,30}", RegexOptions.CultureInvariant)]
    private static partial Regex Word();
}
