using Calx.Papers.Drawings.Parts;
using Calx.Practicals.Definition;

namespace Calx.Papers.Drawings;

/// <summary>Instruments side by side, joined in one loop by leads: the right terminal of each with the left one of the next, and the
/// last with the first. So the strip on the left is joined to the negative side of a supply that stands before it.</summary>
internal static class Circuit
{
    /// <summary>How far leads lie from what they could not be joined to.</summary>
    private const double Beside = 12;

    /// <summary>The instruments with their leads.</summary>
    public static Cluster Of(DrawnPart leads, DrawnPart? on)
    {
        IReadOnlyList<DrawnPart> joined = leads.Others(DrawnPlace.Joins);
        Cluster row = Arrangement.Row(joined, on);
        (Spot, Spot)[] terminals = [.. joined.Select(part => Terminals(part, row)).OfType<(Spot, Spot)>()];
        PartShape shape = Leads.Between(terminals, row.Parts.Count == 0 ? 0 : row.Height);
        return terminals.Length == 0 && row.Parts.Count > 0
            ? Cluster.Of(leads, shape.Moved(row.Left - shape.Right - Beside, 0), on).With(row)
            : Cluster.Of(leads, shape, on).With(row);
    }

    /// <summary>The outermost terminals of a part and of all that it carries, or null where it has none.</summary>
    private static (Spot Left, Spot Right)? Terminals(DrawnPart part, Cluster row)
    {
        HashSet<DrawnPart> all = [.. part.All];
        Spot[] found = [.. row.Parts.Where(p => all.Contains(p.Part)).SelectMany(p => p.Shape.Terminals ?? []).OrderBy(p => p.X)];
        return found.Length == 0 ? null : (found[0], found[^1]);
    }
}
