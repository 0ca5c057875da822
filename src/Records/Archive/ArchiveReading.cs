namespace Calx.Records.Archive;

/// <summary>What an archive was understood as.</summary>
/// <param name="Content">What could be read; null where the whole is no archive.</param>
/// <param name="Faults">What could not be read, a sentence each.</param>
internal sealed record ArchiveReading(ArchiveContent? Content, IReadOnlyList<string> Faults)
{
    public static ArchiveReading None(string reason) => new(null, [reason]);
}
