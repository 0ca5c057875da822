namespace Calx.Papers.Drawings;

/// <summary>A part as a label sees it, in the picture's units, y downwards.</summary>
/// <param name="Height">Height of its label with the space to the next.</param>
/// <param name="Spots">Where its line may end.</param>
/// <param name="Strokes">The part's lines.</param>
internal sealed record Target(double Height, IReadOnlyList<Spot> Spots, IReadOnlyList<SeenStroke> Strokes);
