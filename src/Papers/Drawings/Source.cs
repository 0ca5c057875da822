using Calx.Papers.Drawings.Parts;
using Calx.Practicals.Definition;

namespace Calx.Papers.Drawings;

/// <summary>What heats: a burner whose flame ends below what it heats, or an arrow.</summary>
internal static class Source
{
    /// <summary>The smallest flame that is drawn, in mm.</summary>
    public const double LeastFlame = 30;

    private const double LargestFlame = 58;
    private const double BelowVessel = 5;
    private const double HalfFlame = 12;
    private const double HeatAlone = 150;

    /// <summary>A source of heat below something.</summary>
    /// <param name="heated">What is above it.</param>
    /// <param name="source">The burner or the arrow.</param>
    /// <param name="on">What the burner stands on.</param>
    /// <param name="stands">Height of that, in mm.</param>
    public static Cluster Under(Cluster heated, DrawnPart source, DrawnPart? on, double stands)
    {
        double? lowest = heated.LowestOver(-HalfFlame, HalfFlame);
        if (source.Kind == Apparatus.Heat)
        {
            return Cluster.Of(source, Heat.Shape(), on).Moved(0, lowest - BelowVessel ?? stands + HeatAlone);
        }

        double bottom = lowest ?? stands + Burner.Height + LargestFlame;
        double flame = Math.Clamp(bottom - BelowVessel - stands - Burner.Height, LeastFlame, LargestFlame);
        return Cluster.Of(source, Burner.Shape(source.State.Flame ? flame : null), on).Moved(0, stands);
    }
}
