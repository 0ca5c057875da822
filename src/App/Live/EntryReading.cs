using Calx.Records.Journal;

namespace Calx.App.Live;

/// <summary>What an entry that was sent was understood as.</summary>
/// <param name="Id">Its id as sent, for the answer; null where there was none.</param>
/// <param name="Entry">The entry, or null where it was not understood.</param>
/// <param name="Fault">Why not, or null.</param>
public sealed record EntryReading(string? Id, JournalEntry? Entry, string? Fault)
{
    /// <summary>Whether it says what stands in its place already, so that nothing is to be kept.</summary>
    public bool Known { get; init; }

    /// <summary>What is kept in place of one that was not taken: the wish that the teacher put the reading right. Null for most.</summary>
    public JournalEntry? Wish { get; init; }

    /// <summary>Keeps the wish, where there is one, so that the teacher sees what was not taken.</summary>
    public async Task KeepWish(LessonRoom room, CancellationToken cancellation)
    {
        ArgumentNullException.ThrowIfNull(room);
        if (Wish is JournalEntry wish)
        {
            await room.Append(wish, cancellation);
        }
    }
}
