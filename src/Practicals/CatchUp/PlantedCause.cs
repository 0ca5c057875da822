namespace Calx.Practicals.CatchUp;

/// <summary>A cause that is true of a pack, with its size.</summary>
/// <param name="Cause">Its id.</param>
/// <param name="Label">Its name for people.</param>
/// <param name="MovedInGrams">How far it moved the key difference, in g; for a part left off at a weighing that a later one replaced, its own mass.</param>
public sealed record PlantedCause(string Cause, string Label, double MovedInGrams);
