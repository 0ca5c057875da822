namespace Calx.Papers.Documents;

/// <summary>What stands at the head and foot of every page, so that a sheet found alone says what it belongs to.</summary>
/// <param name="Left">At the head on the left: what paper of which practical.</param>
/// <param name="Right">At the head on the right: class and date.</param>
/// <param name="Foot">At the foot on the left: the practical's version and the date; the page's number stands on the right.</param>
/// <param name="Draft">What stands in a frame on the first page while the practical waits for its check, or null.</param>
public sealed record RunningHeads(string Left, string Right, string Foot, string? Draft);
