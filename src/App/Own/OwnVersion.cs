namespace Calx.App.Own;

/// <summary>A version of a practical of one's own that was saved over.</summary>
/// <param name="Id">The practical.</param>
/// <param name="Number">The version.</param>
/// <param name="Path">Where it stands.</param>
internal sealed record OwnVersion(string Id, int Number, string Path);
