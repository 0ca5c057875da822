using Calx.Practicals.Definition;

namespace Calx.Papers.Drawings;

/// <summary>A drawing in words, for those who cannot see it.</summary>
internal static class DrawingWords
{
    /// <summary>What stands where, from the bench upwards.</summary>
    public static string Of(Drawing drawing) => "A section drawing of the apparatus. On the bench from left to right: "
        + string.Join("; ", drawing.Shows.SelectMany(part => Said(part, string.Empty))) + ".";

    private static IEnumerable<string> Said(DrawnPart part, string where)
    {
        yield return $"{part.Label}{where}{State(part.State)}";
        foreach ((DrawnPlace place, string words) in new[]
        {
            (DrawnPlace.In, "in"), (DrawnPlace.On, "on"), (DrawnPlace.Holds, "held by"), (DrawnPlace.Under, "under"), (DrawnPlace.Beside, "beside"),
        })
        {
            foreach (string said in part.Others(place).SelectMany(other => Said(other, $" {words} the {part.Label}")))
            {
                yield return said;
            }
        }
    }

    private static string State(DrawnState state) =>
        state.Flame ? ", lit" : state.Ajar ? ", leaving a gap at one side" : string.Empty;
}
