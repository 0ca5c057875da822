namespace Calx.Records.Journal;

/// <summary>What became of an entry that was sent. A closed set.</summary>
public abstract record AppendResult
{
    private AppendResult()
    {
    }

    /// <summary>It is in the journal now.</summary>
    /// <param name="Kept">As it stands there.</param>
    public sealed record Added(KeptEntry Kept) : AppendResult;

    /// <summary>It was there already: sent twice it is one entry.</summary>
    /// <param name="Kept">As it stands there.</param>
    public sealed record Known(KeptEntry Kept) : AppendResult;

    /// <summary>It was not taken: another entry has its id. The sender keeps it and sends it under a new one.</summary>
    /// <param name="Reason">Why, in one sentence.</param>
    public sealed record Refused(string Reason) : AppendResult;
}
