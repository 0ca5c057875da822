using System.Text.RegularExpressions;

namespace Calx.Practicals.Readings;

/// <summary>What one heading means when it stands alone, as on a sheet that nobody has filled in yet.</summary>
/// <param name="Column">The practical's reading or ready-made mass that it names, or null where it names none surely.</param>
/// <param name="Unit">The unit written in it, in its usual form, or null.</param>
public sealed record NamedHeading(ExpectedColumn? Column, string? Unit);

/// <summary>Reads headings one at a time by the rules by which a class's table is read.</summary>
public sealed partial class HeadingNames
{
    private readonly HeadingLexicon lexicon;
    private readonly HeadingMatcher matcher;
    private readonly string? vessel;

    /// <summary>Headings of a practical's table.</summary>
    public HeadingNames(ExpectedTable expected)
    {
        ArgumentNullException.ThrowIfNull(expected);
        vessel = expected.VesselLabels.Count > 0 ? expected.VesselLabels[0] : null;
        lexicon = new HeadingLexicon(expected);
        matcher = new HeadingMatcher(lexicon, lexicon.Wide);
    }

    /// <summary>What a heading means. Two meanings that fit equally well are none.</summary>
    public NamedHeading Of(string heading)
    {
        ArgumentNullException.ThrowIfNull(heading);
        NamedHeading named = Read(heading);
        return named.Column is not null || vessel is null || !OtherVessel().IsMatch(heading)
            ? named
            : new NamedHeading(Read(OtherVessel().Replace(heading, vessel)).Column, named.Unit);
    }

    private NamedHeading Read(string heading)
    {
        HeadingText words = lexicon.Text(heading);
        var cell = new HeadingCell(1, heading, words, matcher.Candidates(words));
        return new NamedHeading(cell.Best.Count == 1 ? cell.Best[0].Target.Column : null, words.Unit);
    }

    // A school that heats in another vessel calls it by its name; no source but common practice.
    [GeneratedRegex(@"(?i)\b(evaporating (dish|basin)|dish|basin|bowl|boiling tube|test[ -]?tube)\b", RegexOptions.CultureInvariant)]
    private static partial Regex OtherVessel();

    /// <summary>The unit that a text is and nothing else, such as <c>(g)</c> in a row of units, or null.</summary>
    public static string? UnitAlone(string text)
    {
        ArgumentNullException.ThrowIfNull(text);
        return HeadingUnit.Named(NumberText.Trim(text).Trim("()[]/ "));
    }
}
