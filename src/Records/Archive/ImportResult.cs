namespace Calx.Records.Archive;

/// <summary>What became of an archive. A closed set.</summary>
public abstract record ImportResult
{
    private ImportResult()
    {
    }

    /// <summary>It was read.</summary>
    /// <param name="Added">How many records and entries were added.</param>
    /// <param name="Known">How many were there already, just so.</param>
    /// <param name="Refused">What was not taken, a sentence each: nothing that is there was changed for it.</param>
    public sealed record Taken(int Added, int Known, IReadOnlyList<string> Refused) : ImportResult;

    /// <summary>It is no archive, and nothing was taken in.</summary>
    /// <param name="Reason">Why, in a sentence for the person.</param>
    public sealed record Unreadable(string Reason) : ImportResult;
}
