namespace Calx.Practicals.Readings;

/// <summary>What came of reading a class's table: its readings, or the fault of the whole table.</summary>
public abstract record ClassReading
{
    private ClassReading()
    {
    }

    /// <summary>The table was read, if not all of its cells.</summary>
    /// <param name="Readings">What the class weighed.</param>
    public sealed record Taken(ClassReadings Readings) : ClassReading;

    /// <summary>Nothing can be taken from the table: no readable heading, or one heading twice.</summary>
    /// <param name="Reason">What is wrong and what was expected, a sentence without a full stop.</param>
    /// <param name="Cell">The cell it is about, or null where it is the whole table.</param>
    public sealed record Unreadable(string Reason, CellPosition? Cell) : ClassReading;
}
