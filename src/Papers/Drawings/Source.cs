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

    /// <summary>Height of what burns, without its flame.</summary>
    public static double Height(Apparatus burner) => burner == Apparatus.SpiritBurner ? SpiritBurner.Wick : Burner.Height;

    /// <summary>Whether a burner burns; one with its cap on does not.</summary>
    public static bool IsLit(DrawnPart burner) => burner.State.Flame && burner.Others(DrawnPlace.On).Count == 0;

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

        double bottom = lowest ?? stands + Height(source.Kind) + LargestFlame;
        double flame = Math.Clamp(bottom - BelowVessel - stands - Height(source.Kind), LeastFlame, LargestFlame);
        double? lit = IsLit(source) ? flame : null;
        return (source.Kind == Apparatus.SpiritBurner ? Arrangement.Carrying(source, SpiritBurner.Shape(lit), on) : Cluster.Of(source, Burner.Shape(lit), on)).Moved(0, stands);
    }
}
