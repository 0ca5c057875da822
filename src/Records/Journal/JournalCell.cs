namespace Calx.Records.Journal;

/// <summary>Where in a lesson's table an entry belongs: one weighing, or one observation, of one trial of a group.</summary>
/// <param name="Group">The group's number, from 1.</param>
/// <param name="Trial">The trial, from 1.</param>
/// <param name="What">Id of the weighing, such as <c>after2</c>, or of the observation.</param>
public sealed record JournalCell(int Group, int Trial, string What)
{
    /// <summary>Longest id of a weighing or observation.</summary>
    public const int LongestWhat = 80;
}
