using System.Text.RegularExpressions;

namespace Calx.Papers.SheetCheck.Rules;

/// <summary>'Weight' where mass is meant. To weigh is an action and is let stand; so are weights in newtons, atomic weights, and a sentence
/// that tells the two words apart.</summary>
internal static partial class WeightRule
{
    public static IEnumerable<SheetFinding> Of(CheckedSheet it) =>
        from paragraph in it.Sheet.Paragraphs
        where !OfTheForce().IsMatch(paragraph.Text)
        from Match match in Weight().Matches(paragraph.Text)
        select new SheetFinding(
            "weight", paragraph.Place.At(match.Index, it.Language), Quoted.Around(paragraph.Text, match.Index, match.Length), it.Texts.WeightProblem(match.Value),
            match.Value.EndsWith('s') && match.Value.Length > 2 ? it.Texts.WeightsExpected : it.Texts.WeightExpected);

    [GeneratedRegex(@"(?i)(?<!\batomic )(?<!counter)\b(weights?|wt)\b", RegexOptions.CultureInvariant)]
    private static partial Regex Weight();

    [GeneratedRegex(@"(?i)\b(newtons?|gravity|gravitational)\b|\b(not|never|than|from|and|or)\s+(the\s+)?['‘“""]?(weight|mass)['’”""]?\b.{0,80}\bmeans?\b|\bmass\b['’”""]?,?\s+(and\s+)?(not|never)\s+(the\s+)?['‘“""]?weight|\bnot\s+['‘“""]?weight", RegexOptions.CultureInvariant)]
    private static partial Regex OfTheForce();
}
