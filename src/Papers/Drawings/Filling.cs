using Calx.Papers.Drawings.Parts;
using Calx.Practicals.Definition;

namespace Calx.Papers.Drawings;

/// <summary>Puts contents into a vessel: a solid on the bottom, a liquid above it.</summary>
internal static class Filling
{
    private const double UsualLiquid = 0.4;
    private const double UsualSolid = 0.3;

    /// <summary>A cone is narrow below: a third of its depth would show next to nothing.</summary>
    private const double UsualInCone = 0.5;

    /// <summary>Share of a heap in a lying tube.</summary>
    private const double UsualHeap = 0.75;

    /// <summary>A liquid is drawn at least this much higher than the solid in it, and lower than what dips into the vessel.</summary>
    private const double Clear = 5;

    /// <summary>The contents of a vessel.</summary>
    /// <param name="vessel">The vessel.</param>
    /// <param name="shape">Its shape.</param>
    /// <param name="ceiling">Height in mm below which they stay, or null for the mouth.</param>
    public static Cluster Of(DrawnPart vessel, PartShape shape, double? ceiling = null)
    {
        if (shape.Cavity is not Cavity cavity)
        {
            return Cluster.Empty;
        }

        double most = Math.Min(cavity.Level(0.95), (ceiling ?? double.MaxValue) - Clear);
        IReadOnlyList<Dip> dips = shape.Dips ?? [];
        double bottom = cavity.Bottom;
        bool wet = vessel.Others(DrawnPlace.In).Any(p => p.Kind == Apparatus.Liquid);
        Cluster filled = Cluster.Empty;
        foreach (DrawnPart part in vessel.Others(DrawnPlace.In).Where(p => ApparatusRules.IsContents(p.Kind)).OrderBy(p => p.Kind == Apparatus.Liquid))
        {
            bool liquid = part.Kind == Apparatus.Liquid;
            double wanted = cavity.Level(part.State.Level ?? Usual(vessel.Kind, liquid));
            double height = Math.Min(liquid ? Math.Max(wanted, bottom + Clear) : Math.Min(wanted, most - (wet ? 2 * Clear : 0)), most);
            PartShape contents = part.Kind switch
            {
                Apparatus.Liquid => Contents.Liquid(cavity, height, bottom, dips),
                Apparatus.Powder => Contents.Powder(cavity, height, dips),
                Apparatus.Crystals => Contents.Crystals(cavity, height, dips),
                _ => Contents.Ribbon(cavity),
            };
            bottom = Math.Max(height, contents.Height);
            filled = filled.With(Cluster.Of(part, contents, vessel));
        }

        return filled;
    }

    private static double Usual(Apparatus vessel, bool liquid) => vessel switch
    {
        Apparatus.Filter => UsualInCone,
        Apparatus.ReductionTube => UsualHeap,
        _ => liquid ? UsualLiquid : UsualSolid,
    };
}
