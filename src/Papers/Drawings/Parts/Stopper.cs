namespace Calx.Papers.Drawings.Parts;

/// <summary>A stopper that tapers, in the neck of a vessel. Common practice, no source.</summary>
internal static class Stopper
{
    /// <summary>A stopper that fits a neck; the mouth is at y = 0.</summary>
    /// <param name="neck">Half the width of the neck, in mm.</param>
    public static PartShape In(double neck) => new(
        [new Pen(neck - 2, -12).To(neck, 0).To(neck + 1.5, 9).AndMirrored().Closed()],
        PartShape.BothSides(new(neck + 0.8, 7), new(neck - 3, 7), new(neck - 6, -4)),
        Top: 9);
}
