namespace Calx.Papers.Drawings;

/// <summary>What hangs down into a vessel's contents, which then leave it out: mm, from the vessel's middle.</summary>
/// <param name="Left">Its left side.</param>
/// <param name="Right">Its right side.</param>
/// <param name="Bottom">Height of its lower end.</param>
internal readonly record struct Dip(double Left, double Right, double Bottom)
{
    private const double Off = 1.2;

    /// <summary>Whether a mark or a dash would lie on it.</summary>
    public bool Covers(double left, double right, double top) => right > Left - Off && left < Right + Off && top > Bottom - Off;
}
