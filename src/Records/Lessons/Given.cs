namespace Calx.Records.Lessons;

/// <summary>What constructors of records ask of ids and numbers.</summary>
internal static class Given
{
    public static RecordId Id(RecordId id, string name) => id == default ? throw new ArgumentException("A record has an id.", name) : id;

    public static int AtLeast(int least, int value, string name)
    {
        ArgumentOutOfRangeException.ThrowIfLessThan(value, least, name);
        return value;
    }
}
