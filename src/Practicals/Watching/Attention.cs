namespace Calx.Practicals.Watching;

/// <summary>What needs the teacher in one group now.</summary>
/// <param name="Group">The group's number.</param>
/// <param name="Kind">What it is; its place among the kinds is the rank.</param>
/// <param name="Sentence">What to do, for the teacher; empty for nothing.</param>
/// <param name="SinceMinute">Since when, or null where that is not known.</param>
public sealed record Attention(int Group, AttentionKind Kind, string Sentence, double? SinceMinute)
{
    /// <summary>Rank, from 0 for the most urgent.</summary>
    public int Rank => (int)Kind;

    /// <summary>Groups in the order in which the teacher is needed: by rank, then who waits longest, then by number.</summary>
    public static IReadOnlyList<Attention> InOrder(IEnumerable<Attention> groups) =>
        [.. groups.OrderBy(a => a.Rank).ThenBy(a => a.SinceMinute ?? double.PositiveInfinity).ThenBy(a => a.Group)];
}
