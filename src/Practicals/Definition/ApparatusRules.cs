using static Calx.Practicals.Definition.Apparatus;
using static Calx.Practicals.Definition.DrawnPlace;

namespace Calx.Practicals.Definition;

/// <summary>The words for the parts of a drawing, and which part may be where. Common practice of the bench, no source: a
/// round-bottomed tube stands nowhere, a crucible on a flame stands in its triangle, a funnel in the neck of a flask.</summary>
public static class ApparatusRules
{
    /// <summary>More labels do not fit beside one drawing.</summary>
    public const int MostParts = 14;

    /// <summary>Most characters of a label: longer ones do not fit beside a drawing.</summary>
    public const int LongestLabel = 60;

    /// <summary>Most characters of a word in a label.</summary>
    public const int LongestWord = 30;

    private static readonly Apparatus[] Solids = [Powder, Crystals, Ribbon];
    private static readonly Apparatus[] Contents = [.. Solids, Liquid];
    private static readonly Apparatus[] Ground = [Tripod, Burner, Candle, Crucible, Basin, Beaker, Flask, Jar, Bottle, Clamp, Balance, Tongs];

    private static readonly Dictionary<Apparatus, string> Labels = new()
    {
        [Mat] = "heat-resistant mat",
        [Triangle] = "pipe-clay triangle",
        [Basin] = "evaporating basin",
        [Flask] = "conical flask",
        [Tube] = "test tube",
        [Candle] = "tea light",
        [Cover] = "lid, pushed on",
        [Bottle] = "plastic bottle",
        [Plug] = "wool plug",
        [Filter] = "funnel with filter paper",
        [Clamp] = "stand and clamp",
    };

    private static readonly Dictionary<(Apparatus, DrawnPlace), Apparatus[]> Allowed = new()
    {
        [(Mat, On)] = Ground,
        [(Tripod, On)] = [Triangle, Gauze],
        [(Tripod, Under)] = [Burner, Heat],
        [(Triangle, On)] = [Crucible],
        [(Gauze, On)] = [Beaker, Flask, Basin],
        [(Crucible, On)] = [Lid],
        [(Crucible, In)] = Contents,
        [(Basin, In)] = Contents,
        [(Beaker, In)] = Contents,
        [(Beaker, On)] = [Basin],
        [(Flask, In)] = Contents,
        [(Flask, On)] = [Filter, Stopper, Plug],
        [(Jar, In)] = [Candle],
        [(Jar, On)] = [Cover],
        [(Bottle, In)] = Contents,
        [(Bottle, On)] = [Stopper],
        [(Tube, In)] = Contents,
        [(Filter, In)] = [Powder, Crystals, Liquid],
        [(Clamp, Holds)] = [Tube, Flask, Filter],
        [(Clamp, Under)] = [Burner, Heat, Beaker, Flask],
        [(Balance, On)] = [Crucible, Basin, Beaker, Flask, Jar, Bottle, Candle],
    };

    /// <summary>The word of each part in a file.</summary>
    public static IReadOnlyDictionary<string, Apparatus> Words { get; } =
        Enum.GetValues<Apparatus>().ToDictionary(kind => kind.ToString().ToLowerInvariant());

    /// <summary>What may stand on the bench.</summary>
    public static IReadOnlyList<Apparatus> OnBench { get; } = [Mat, .. Ground];

    /// <summary>The word of a part in a file.</summary>
    public static string WordOf(Apparatus kind) => kind.ToString().ToLowerInvariant();

    /// <summary>The label of a part where its file gives none.</summary>
    public static string LabelOf(Apparatus kind) => Labels.GetValueOrDefault(kind, WordOf(kind));

    /// <summary>Which parts may be at a place of another; none where it has no such place. What may be beside a part depends on
    /// what both stand on.</summary>
    public static IReadOnlyList<Apparatus> At(Apparatus kind, DrawnPlace place) => Allowed.GetValueOrDefault((kind, place), []);

    /// <summary>Whether a place takes any number of parts side by side; every other takes one, and a vessel one solid with one liquid.</summary>
    public static bool TakesMany(Apparatus kind, DrawnPlace place) => (kind, place) is (Mat, On);

    /// <summary>Whether a part is contents of a vessel.</summary>
    public static bool IsContents(Apparatus kind) => Contents.Contains(kind);
}
