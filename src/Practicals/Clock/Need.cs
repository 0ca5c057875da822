namespace Calx.Practicals.Clock;

/// <summary>So many of one shared thing, held during an activity.</summary>
/// <param name="Resource">Which, by its place in the simulation's list.</param>
/// <param name="Units">How many, from 1.</param>
internal readonly record struct Need(int Resource, int Units);
