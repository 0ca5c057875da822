namespace Calx.Practicals.Readings;

/// <summary>A cell that could not be taken as a reading, with the reason; the rest of its row is kept.</summary>
public sealed class RejectedCell
{
    /// <summary>Takes a rejected cell.</summary>
    /// <exception cref="ArgumentException"><paramref name="reason"/> is empty.</exception>
    public RejectedCell(CellPosition cell, string heading, string text, string reason)
    {
        ArgumentNullException.ThrowIfNull(cell);
        ArgumentNullException.ThrowIfNull(heading);
        ArgumentNullException.ThrowIfNull(text);
        ArgumentException.ThrowIfNullOrWhiteSpace(reason);
        Cell = cell;
        Heading = heading;
        Text = text;
        Reason = reason;
    }

    /// <summary>Where it stands.</summary>
    public CellPosition Cell { get; }

    /// <summary>The heading over it, as written; empty where there is none.</summary>
    public string Heading { get; }

    /// <summary>Its text as shown.</summary>
    public string Text { get; }

    /// <summary>Why it was not taken, and what was expected: a sentence without a full stop.</summary>
    public string Reason { get; }
}
