namespace Calx.Records.Storage;

/// <summary>Records could not be opened, read or kept. Nothing of the change that met it was kept unless
/// <see cref="StoreTrouble.ConnectionLost"/> came at the very end of it; sending an entry again is safe in every case.</summary>
public sealed class StoreUnavailableException : Exception
{
    /// <summary>Takes the trouble.</summary>
    /// <param name="trouble">Which.</param>
    /// <param name="reason">What is wrong and what can be done, in sentences for the person.</param>
    /// <param name="inner">What the database reported.</param>
    public StoreUnavailableException(StoreTrouble trouble, string reason, Exception? inner = null)
        : base(reason, inner) => Trouble = trouble;

    /// <summary>Which.</summary>
    public StoreTrouble Trouble { get; }

    /// <summary>What is wrong and what can be done, in sentences for the person.</summary>
    public string Reason => Message;

    /// <summary>Whether it passes by itself, so that trying again later helps.</summary>
    public bool MayPass => Trouble is StoreTrouble.DiskFull or StoreTrouble.Locked or StoreTrouble.ConnectionLost;
}
