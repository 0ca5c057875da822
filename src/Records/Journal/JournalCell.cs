namespace Calx.Records.Journal;

/// <summary>Where in a lesson's table an entry belongs: one weighing, observation, answer or happening of one trial of a group.</summary>
/// <param name="Group">The group's number, from 1; 0 for what concerns the whole lesson.</param>
/// <param name="Trial">The trial, from 1.</param>
/// <param name="What">Id of the weighing, such as <c>after2</c>, or of the observation, question or happening.</param>
/// <param name="Member">The number in the class of the one member whom it concerns, from 1; 0 for the whole group.</param>
public sealed record JournalCell(int Group, int Trial, string What, int Member = 0)
{
    /// <summary>Longest id of a weighing or observation.</summary>
    public const int LongestWhat = 80;
}
