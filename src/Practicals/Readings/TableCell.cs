namespace Calx.Practicals.Readings;

/// <summary>One cell of a table that a person filled in: its column and its text as shown.</summary>
public sealed class TableCell
{
    /// <summary>Takes a cell.</summary>
    /// <param name="column">Column number as in the file, from 1.</param>
    /// <param name="text">The text as shown; never null, may be empty.</param>
    /// <param name="decimalsShown">False where the file keeps a bare number and no number of decimals (a spreadsheet's
    /// General format shows 15.10 as 15.1), so that a missing trailing zero says nothing about what was read.</param>
    /// <exception cref="ArgumentOutOfRangeException"><paramref name="column"/> is below 1.</exception>
    public TableCell(int column, string text, bool decimalsShown = true)
    {
        ArgumentOutOfRangeException.ThrowIfLessThan(column, 1);
        ArgumentNullException.ThrowIfNull(text);
        Column = column;
        Text = text;
        DecimalsShown = decimalsShown;
    }

    /// <summary>Column number as in the file, from 1.</summary>
    public int Column { get; }

    /// <summary>The text as shown.</summary>
    public string Text { get; }

    /// <summary>Whether trailing zeros would be seen in the text if they had been written.</summary>
    public bool DecimalsShown { get; }
}
