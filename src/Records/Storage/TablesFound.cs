namespace Calx.Records.Storage;

/// <summary>What a database holds when it is opened.</summary>
internal enum TablesFound
{
    None,
    Ours,
    Others,
}
