namespace Calx.Practicals.Definition;

/// <summary>How a part is shown. <c>default</c> is a part as it comes: a lid closed, a burner without flame.</summary>
/// <param name="Ajar">Whether a lid leaves a gap.</param>
/// <param name="Flame">Whether a burner or a candle is lit.</param>
/// <param name="Level">How high contents reach, as a share of the vessel's depth, above 0 and below 1; null for the usual.</param>
public readonly record struct DrawnState(bool Ajar, bool Flame, double? Level);
