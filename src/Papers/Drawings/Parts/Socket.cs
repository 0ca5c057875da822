namespace Calx.Papers.Drawings.Parts;

/// <summary>A terminal on top of an instrument, where a lead is plugged in.</summary>
internal static class Socket
{
    /// <summary>How far it stands out.</summary>
    public const double Height = 5;

    private const double Half = 3.5;

    /// <summary>A terminal on a surface.</summary>
    public static Stroke[] At(double x, double y) => [Pen.Box(x - Half, y, x + Half, y + Height)];
}
