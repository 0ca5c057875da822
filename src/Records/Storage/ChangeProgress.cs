namespace Calx.Records.Storage;

/// <summary>How far an attempt at a change came.</summary>
internal sealed class ChangeProgress
{
    public bool Committing { get; set; }
}
