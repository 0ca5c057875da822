namespace Calx.Records.Journal;

/// <summary>An entry as it stands in the journal.</summary>
/// <param name="Entry">The entry.</param>
/// <param name="Number">Its place in the journal, from 1: the order in which entries were received decides, never a clock.</param>
/// <param name="ReceivedAt">When it was received.</param>
public sealed record KeptEntry(JournalEntry Entry, long Number, DateTimeOffset ReceivedAt);
