namespace Calx.Records.Storage;

/// <summary>The sentences for a person whose records cannot be kept.</summary>
internal static class TroubleText
{
    private const string Safe = "What was kept before is safe; what was not taken stays where it was typed and can be sent again.";

    public static StoreUnavailableException Of(StoreTrouble trouble, string place, Exception inner) => new(
        trouble,
        trouble switch
        {
            StoreTrouble.DiskFull => $"The disk that holds the records is full: make room on it. {Safe}",
            StoreTrouble.Locked => $"Another program holds the records ({place}): close it, or wait until it is done. {Safe}",
            StoreTrouble.ConnectionLost => $"The database does not answer: see that it runs and can be reached. {Safe}",
            StoreTrouble.ReadOnly => $"The records ({place}) may be read but not written: give this user leave to write there.",
            StoreTrouble.CannotOpen => $"The records ({place}) cannot be opened: see that the folder or database is there and that this user may open it.",
            StoreTrouble.NotOurDatabase => $"'{place}' is not a database of records: name another file, or move this one away.",
            StoreTrouble.Damaged => $"The database of records ({place}) is damaged: put back the last backup, and keep the damaged file.",
            _ => $"The database reports a fault: {inner.Message}",
        },
        inner);

    public static StoreUnavailableException Newer(string place, long found, long known) => new(
        StoreTrouble.NewerVersion,
        FormattableString.Invariant($"The records ({place}) were made by a newer version of this program (records version {found}; this one knows {known}). Use that version, or restore a backup made before."));
}
