namespace Calx.App.Pages.Keeping;

/// <summary>What can be done with the records as a whole.</summary>
/// <param name="Place">Where they are kept, in words.</param>
/// <param name="Exports">Where exports are put before something is erased.</param>
/// <param name="Import">What became of an import, or null.</param>
/// <param name="Done">What was done, or null.</param>
/// <param name="Fault">What was wrong, or null.</param>
public sealed record RecordsModel(string Place, string Exports, ImportWords? Import, string? Done, string? Fault);
