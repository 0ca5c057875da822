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
    private static readonly Apparatus[] Ground = [Tripod, Burner, SpiritBurner, Candle, Crucible, Basin, Beaker, Can, Flask, Jar, Bottle, Clamp, Balance, Leads, Supply, Ammeter, Resistor, Strip, Tongs];

    private static readonly Dictionary<Apparatus, string> Labels = new()
    {
        [Mat] = "heat-resistant mat",
        [Triangle] = "pipe-clay triangle",
        [Basin] = "evaporating basin",
        [Flask] = "conical flask",
        [Tube] = "test tube",
        [SpiritBurner] = "spirit burner",
        [Can] = "metal can",
        [ReductionTube] = "reduction tube",
        [Gas] = "gas, through bung and tubing",
        [Jet] = "gas burning at the hole",
        [Supply] = "low-voltage supply",
        [Resistor] = "variable resistor",
        [Holder] = "holder across the rim",
        [Strip] = "strip of metal",
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
        [(Gauze, On)] = [Beaker, Can, Flask, Basin],
        [(SpiritBurner, In)] = [Liquid],
        [(SpiritBurner, On)] = [Cap],
        [(Can, In)] = Contents,
        [(Crucible, On)] = [Lid],
        [(Crucible, In)] = Contents,
        [(Basin, In)] = Contents,
        [(Beaker, In)] = [.. Contents, ReductionTube],
        [(Beaker, On)] = [Basin, Holder],
        [(Holder, Holds)] = [Strip],
        [(Flask, In)] = Contents,
        [(Flask, On)] = [Filter, Stopper, Plug],
        [(Jar, In)] = [Candle],
        [(Jar, On)] = [Cover],
        [(Bottle, In)] = Contents,
        [(Bottle, On)] = [Stopper],
        [(Tube, In)] = Contents,
        [(Filter, In)] = [Powder, Crystals, Liquid],
        [(ReductionTube, In)] = [Powder, Crystals],
        [(ReductionTube, On)] = [Jet],
        [(ReductionTube, Joins)] = [Gas],
        [(Clamp, Holds)] = [Tube, ReductionTube, Flask, Filter, Can],
        [(Clamp, Under)] = [Burner, SpiritBurner, Heat, Beaker, Flask],
        [(Leads, Joins)] = [Supply, Ammeter, Resistor, Beaker],
        [(Balance, On)] = [Crucible, Basin, Beaker, Can, Flask, Jar, Bottle, Candle, SpiritBurner, Strip],
    };

    /// <summary>The word of each part in a file.</summary>
    public static IReadOnlyDictionary<string, Apparatus> Words { get; } =
        Enum.GetValues<Apparatus>().ToDictionary(WordOf);

    /// <summary>What may stand on the bench.</summary>
    public static IReadOnlyList<Apparatus> OnBench { get; } = [Mat, .. Ground];

    /// <summary>The word of a part in a file.</summary>
    public static string WordOf(Apparatus kind) =>
        string.Concat(kind.ToString().Select((letter, i) => char.IsUpper(letter) && i > 0 ? $"-{char.ToLowerInvariant(letter)}" : $"{char.ToLowerInvariant(letter)}"));

    /// <summary>The label of a part where its file gives none.</summary>
    public static string LabelOf(Apparatus kind) => Labels.GetValueOrDefault(kind) ?? WordOf(kind);

    /// <summary>Which parts may be at a place of another; none where it has no such place. What may be beside a part depends on
    /// what both stand on.</summary>
    public static IReadOnlyList<Apparatus> At(Apparatus kind, DrawnPlace place) => Allowed.GetValueOrDefault((kind, place), []);

    /// <summary>Whether a place takes any number of parts side by side.</summary>
    public static bool TakesMany(Apparatus kind, DrawnPlace place) => (kind, place) is (Mat, On) or (Leads, Joins);

    /// <summary>How many of one kind a place takes that has not room for any number: a holder two strips, every other one part, and a
    /// vessel one solid with one liquid.</summary>
    public static int Most(Apparatus kind, DrawnPlace place) => (kind, place) is (Holder, Holds) ? 2 : 1;

    /// <summary>Whether a part is contents of a vessel.</summary>
    public static bool IsContents(Apparatus kind) => Contents.Contains(kind);
}
