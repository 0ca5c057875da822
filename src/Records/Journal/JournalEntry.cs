namespace Calx.Records.Journal;

/// <summary>One thing that somebody typed in a lesson. It never changes: a correction is another entry that replaces it, with a
/// reason, and both are kept.</summary>
public sealed record JournalEntry
{
    /// <summary>Longest reason, name of a device, unit or letter.</summary>
    public const int LongestText = 200;

    /// <summary>Takes an entry.</summary>
    /// <param name="id">Made where it was typed.</param>
    /// <param name="cell">Where it belongs.</param>
    /// <param name="content">What was typed.</param>
    /// <param name="device">Who typed it, by the device's own name.</param>
    /// <param name="typedAt">When it was typed, by the device's clock.</param>
    /// <param name="replaces">The entry that it corrects, or null.</param>
    /// <param name="reason">Why; needed for a correction, and only there.</param>
    /// <exception cref="ArgumentException">A text is missing, too long, or there where it does not belong; or the entry replaces itself.</exception>
    public JournalEntry(
        EntryId id, JournalCell cell, EntryContent content, string device, DateTimeOffset typedAt, EntryId? replaces = null, string? reason = null)
    {
        ArgumentNullException.ThrowIfNull(cell);
        ArgumentNullException.ThrowIfNull(content);
        ArgumentException.ThrowIfNullOrWhiteSpace(device);
        ArgumentException.ThrowIfNullOrWhiteSpace(cell.What);
        if (id == default || replaces == id || (replaces is null) != (reason is null) || (reason is not null && string.IsNullOrWhiteSpace(reason)))
        {
            throw new ArgumentException("An entry has an id; a correction replaces another entry and has a reason, and nothing else has one.", nameof(reason));
        }

        string?[] texts = [device, reason, .. content is EntryContent.Reading r ? [r.Unit, r.Balance, r.Vessel] : Array.Empty<string?>()];
        if (texts.Any(t => t is { Length: > LongestText }) || cell.What.Length > JournalCell.LongestWhat || cell.Group < 1 || cell.Trial < 1)
        {
            throw new ArgumentException("A text is too long, or the group or trial is below 1.", nameof(cell));
        }

        (Id, Cell, Content, Device, TypedAt, Replaces, Reason) = (id, cell, content, device, typedAt, replaces, reason);
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
