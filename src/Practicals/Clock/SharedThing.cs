namespace Calx.Practicals.Clock;

/// <summary>Something that groups share and may have to wait for.</summary>
/// <param name="Id"><c>balance</c>, <c>teacher</c> or the id of a piece of kit.</param>
/// <param name="Label">What it is, for people.</param>
/// <param name="Units">How many there are.</param>
public sealed record SharedThing(string Id, string Label, int Units);
