namespace Calx.Papers.Drawings.Parts;

/// <summary>Heat without saying from what: an arrow upwards, its tip at y = 0.</summary>
internal static class Heat
{
    /// <summary>How long the arrow is.</summary>
    public const double Length = 48;

    public static PartShape Shape() => new(
        [
            new Pen(0, -Length).To(0, -8).Open(),
            new Pen(0, 0).To(4.5, -11).To(-4.5, -11).Closed(Stroke.Grain),
        ],
        [new(0, -30), new(0, -40)]);
}
