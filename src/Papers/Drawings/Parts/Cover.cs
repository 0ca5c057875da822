namespace Calx.Papers.Drawings.Parts;

/// <summary>A lid that is pushed over the rim of a jar. Common practice, no source.</summary>
internal static class Cover
{
    private const double Thick = 3;
    private const double Skirt = 10;

    public static PartShape Shape() => new(
        [
            new Pen(Jar.Half, -Skirt).To(Jar.Half + Thick, -Skirt).To(Jar.Half + Thick, Thick + 1).AndMirrored()
                .To(-Jar.Half, 0).To(Jar.Half, 0).Closed(),
        ],
        PartShape.BothSides(new(Jar.Half - 8, Thick), new(Jar.Half - 20, Thick), new(Jar.Half - 30, Thick)),
        Top: Thick + 1);
}
