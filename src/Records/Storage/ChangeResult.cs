namespace Calx.Records.Storage;

/// <summary>What became of a change. A closed set.</summary>
public abstract record ChangeResult
{
    private ChangeResult()
    {
    }

    /// <summary>It was made, or all was so already.</summary>
    public sealed record Done : ChangeResult;

    /// <summary>It was not made, and nothing was changed.</summary>
    /// <param name="Reason">Why, in a sentence for the person.</param>
    public sealed record Refused(string Reason) : ChangeResult;
}
