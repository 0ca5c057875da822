using Calx.Records.Journal;

namespace Calx.App.Live;

/// <summary>What an entry that was sent was understood as.</summary>
/// <param name="Id">Its id as sent, for the answer; null where there was none.</param>
/// <param name="Entry">The entry, or null where it was not understood.</param>
/// <param name="Fault">Why not, or null.</param>
public sealed record EntryReading(string? Id, JournalEntry? Entry, string? Fault);
