namespace Calx.App.Own;

/// <summary>What became of saving a practical of one's own. A closed set.</summary>
internal abstract record SaveResult
{
    private SaveResult()
    {
    }

    /// <summary>It is saved, or was there just so.</summary>
    /// <param name="Id">The practical.</param>
    /// <param name="Version">Its version now.</param>
    public sealed record Saved(string Id, int Version) : SaveResult;

    /// <summary>It was not saved, and nothing was changed.</summary>
    /// <param name="Reason">Why, in a sentence.</param>
    public sealed record Refused(string Reason) : SaveResult;
}
