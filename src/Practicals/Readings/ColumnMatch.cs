namespace Calx.Practicals.Readings;

/// <summary>One column of a class file and what it was taken for, so that a person can check it.</summary>
public sealed class ColumnMatch
{
    /// <summary>Takes a column.</summary>
    /// <param name="heading">The heading as written; empty where there is none.</param>
    /// <param name="column">Column number, from 1.</param>
    /// <param name="meaning">What it was taken for.</param>
    /// <param name="matchedBy">How it was recognised.</param>
    /// <param name="unit">Unit of its numbers as found in the heading, or null where none is written there.</param>
    public ColumnMatch(string heading, int column, ColumnMeaning meaning, MatchedBy matchedBy, string? unit = null)
    {
        ArgumentNullException.ThrowIfNull(heading);
        ArgumentNullException.ThrowIfNull(meaning);
        ArgumentOutOfRangeException.ThrowIfLessThan(column, 1);
        Heading = heading;
        Column = column;
        Meaning = meaning;
        MatchedBy = matchedBy;
        Unit = unit;
    }

    /// <summary>The heading as written; empty where there is none.</summary>
    public string Heading { get; }

    /// <summary>Column number, from 1.</summary>
    public int Column { get; }

    /// <summary>The column's letters.</summary>
    public string ColumnLetter => CellPosition.LetterOf(Column);

    /// <summary>What it was taken for.</summary>
    public ColumnMeaning Meaning { get; }

    /// <summary>How it was recognised.</summary>
    public MatchedBy MatchedBy { get; }

    /// <summary>Unit found in the heading, or null.</summary>
    public string? Unit { get; }
}
