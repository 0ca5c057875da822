namespace Calx.Papers.Drawings;

/// <summary>A place of a drawing. In the apparatus x goes right and y up, in mm; in the picture x goes right and y down, in
/// its units.</summary>
internal readonly record struct Spot(double X, double Y)
{
    /// <summary>The place moved.</summary>
    public Spot Moved(double dx, double dy) => new(X + dx, Y + dy);

    /// <summary>The place turned about (0, 0), from x towards y.</summary>
    public Spot Turned(double radians) =>
        new((X * Math.Cos(radians)) - (Y * Math.Sin(radians)), (X * Math.Sin(radians)) + (Y * Math.Cos(radians)));

    /// <summary>How far it is from another.</summary>
    public double To(Spot other) => Math.Sqrt(((X - other.X) * (X - other.X)) + ((Y - other.Y) * (Y - other.Y)));
}
