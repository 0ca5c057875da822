namespace Calx.Papers.Drawings;

/// <summary>Where labels may stand: two columns beside the drawing, in the picture's units.</summary>
/// <param name="Left">Where lines begin on the left.</param>
/// <param name="Right">Where lines begin on the right.</param>
/// <param name="Top">Top edge of the highest label.</param>
/// <param name="Bottom">Bottom edge of the lowest label.</param>
internal sealed record LabelFrame(double Left, double Right, double Top, double Bottom);
