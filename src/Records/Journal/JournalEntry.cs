namespace Calx.Records.Journal;

/// <summary>One thing that somebody typed in a lesson. It never changes: a correction is another entry that replaces it, with a
/// reason, and both are kept.</summary>
public sealed record JournalEntry
{
    /// <summary>Longest reason or name of a device.</summary>
    public const int LongestText = 200;

    /// <summary>Takes an entry.</summary>
    /// <param name="id">Made where it was typed.</param>
    /// <param name="cell">Where it belongs.</param>
    /// <param name="content">What was typed.</param>
    /// <param name="device">Who typed it, by the device's own name.</param>
    /// <param name="typedAt">When it was typed, by the device's clock.</param>
    /// <param name="replaces">The entry that it corrects, or null.</param>
    /// <param name="reason">Why; needed for a correction, and only there.</param>
    /// <exception cref="ArgumentException">A text is missing, too long, or there where it does not belong; a number is
    /// out of its range; or the entry replaces itself.</exception>
    public JournalEntry(
        EntryId id, JournalCell cell, EntryContent content, string device, DateTimeOffset typedAt, EntryId? replaces = null, string? reason = null)
    {
        ArgumentNullException.ThrowIfNull(cell);
        ArgumentNullException.ThrowIfNull(content);
        if (id == default || replaces == id || replaces == default(EntryId) || (replaces is null) != (reason is null))
        {
            throw new ArgumentException("An entry has an id; a correction replaces another entry and has a reason, and nothing else has one.", nameof(reason));
        }

        if (cell.Group < 0 || cell.Trial < 1 || cell.Member < 0)
        {
            throw new ArgumentException("A group or member is not below 0, and a trial not below 1.", nameof(cell));
        }

        KeptText.Needed(device, LongestText, nameof(device));
        KeptText.Needed(cell.What, JournalCell.LongestWhat, nameof(cell));
        if (reason is not null)
        {
            KeptText.Needed(reason, LongestText, nameof(reason));
        }

        content.Check();
        (Id, Cell, Content, Device, TypedAt, Replaces, Reason) = (id, cell, content, device, typedAt, replaces, reason);
    }

    /// <summary>An entry by which another one of the same cell is set aside, so that it no longer counts: words beside the readings that
    /// replace what they name. One decision on a cell is one of these for each entry that loses.</summary>
    /// <param name="id">Its own id.</param>
    /// <param name="other">The entry that is set aside.</param>
    /// <param name="device">Who decided.</param>
    /// <param name="typedAt">When, by the device's clock.</param>
    /// <param name="reason">Why.</param>
    public static JournalEntry SettingAside(EntryId id, JournalEntry other, string device, DateTimeOffset typedAt, string reason)
    {
        ArgumentNullException.ThrowIfNull(other);
        return new(id, other.Cell, new EntryContent.Note($"Set aside: {reason}"), device, typedAt, other.Id, reason);
    }

    /// <summary>Whether another one is the same in everything but the time at which it was typed.</summary>
    public bool IsSameButForTime(JournalEntry other)
    {
        ArgumentNullException.ThrowIfNull(other);
        return other == new JournalEntry(Id, Cell, Content, Device, other.TypedAt, Replaces, Reason);
    }

    /// <summary>Made where it was typed.</summary>
    public EntryId Id { get; }

    /// <summary>Where it belongs.</summary>
    public JournalCell Cell { get; }

    /// <summary>What was typed.</summary>
    public EntryContent Content { get; }

    /// <summary>Who typed it.</summary>
    public string Device { get; }

    /// <summary>When it was typed, by the device's clock, which may be wrong: nothing is decided by it.</summary>
    public DateTimeOffset TypedAt { get; }

    /// <summary>The entry that it corrects, or null.</summary>
    public EntryId? Replaces { get; }

    /// <summary>Why it corrects it, or null.</summary>
    public string? Reason { get; }
}
