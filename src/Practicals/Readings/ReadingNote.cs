namespace Calx.Practicals.Readings;

/// <summary>Something a person should know of how the table was read; nothing was rejected for it.</summary>
public sealed class ReadingNote
{
    /// <summary>Takes a note: a sentence without a full stop, and the cell it is about or null.</summary>
    /// <exception cref="ArgumentException"><paramref name="text"/> is empty.</exception>
    public ReadingNote(string text, CellPosition? cell = null)
    {
        ArgumentException.ThrowIfNullOrWhiteSpace(text);
        Text = text;
        Cell = cell;
    }

    /// <summary>The note, a sentence without a full stop.</summary>
    public string Text { get; }

    /// <summary>The cell it is about, or null where it is about more than one.</summary>
    public CellPosition? Cell { get; }

    /// <summary>The note with its place before it.</summary>
    public override string ToString() => Cell is null ? Text : $"{Cell}: {Text}";
}
