namespace Calx.Practicals.Readings;

/// <summary>One cell of a heading row and all that it could mean.</summary>
internal sealed class HeadingCell
{
    public HeadingCell(int column, string text, HeadingText words, IReadOnlyList<HeadingCandidate> candidates)
    {
        Column = column;
        Text = text;
        Words = words;
        HeadingCandidate[] fit = [.. candidates.Where(c => c.Target.Admits(words.Unit))];
        Best = fit.Length == 0 ? fit : [.. fit.Where(c => Rank(c.Rule) == fit.Min(f => Rank(f.Rule)))];
        WrongUnit = fit.Length > 0 ? null : candidates.FirstOrDefault(c => c.IsSure);
    }

    /// <summary>Column number, from 1.</summary>
    public int Column { get; }

    /// <summary>The heading as written.</summary>
    public string Text { get; }

    public HeadingText Words { get; }

    /// <summary>Meanings by the surest rule that applies, among those whose unit fits.</summary>
    public IReadOnlyList<HeadingCandidate> Best { get; }

    /// <summary>A sure meaning whose unit is not that of the heading, where there is no other.</summary>
    public HeadingCandidate? WrongUnit { get; }

    /// <summary>Whether it is only 'mass' or 'reading' with a number, so that its place may tell what it is.</summary>
    public bool IsNumberedMass =>
        Best.Count == 0 && Words is { Core.Length: 0, Words.Length: > 0, Number: not null, Unit: null or "g" or "mg" or "kg" };

    /// <summary>Whether its text is the same as another's but for case and spaces.</summary>
    public bool ReadsLike(HeadingCell other) =>
        Words.Key.Length > 0 && Words.Key == other.Words.Key && Words.Unit == other.Words.Unit;

    // Label and alias rank alike: an alias of one reading that is another's label would be a tie.
    private static HeadingRule Rank(HeadingRule rule) => rule == HeadingRule.Alias ? HeadingRule.Label : rule;
}
