namespace Calx.App.Live;

/// <summary>What a lesson knows of a student.</summary>
/// <param name="Presence">One of the words below.</param>
/// <param name="Group">The number of the group, or 0.</param>
public sealed record MemberState(string Presence, int Group)
{
    public const string Present = "present";
    public const string Late = "late";
    public const string Away = "away";

    /// <summary>Of whom nothing was said: taken as present, without a group.</summary>
    public static MemberState Unknown { get; } = new(Present, 0);

    /// <summary>All words for presence.</summary>
    public static IReadOnlyList<string> All { get; } = [Present, Late, Away];
}
