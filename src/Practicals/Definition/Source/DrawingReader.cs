namespace Calx.Practicals.Definition.Source;

/// <summary>Reads the drawings of the apparatus: which parts they show, and what stands on, in, under or beside what.</summary>
internal sealed class DrawingReader(IdTables ids, FaultList faults)
{
    private const string Described = "a part of a drawing: its word, or keys with 'part'";

    private static readonly Dictionary<DrawnPlace, string> Keys = new()
    {
        [DrawnPlace.On] = "on",
        [DrawnPlace.In] = "in",
        [DrawnPlace.Under] = "under",
        [DrawnPlace.Holds] = "holds",
        [DrawnPlace.Joins] = "joins",
        [DrawnPlace.Beside] = "beside",
    };

    public IReadOnlyList<Drawing> Drawings(FileMap root) => root.Each("drawings", "a drawing", Drawing, needed: false);

    private Drawing Drawing(FileMap map)
    {
        var drawing = new Drawing(
            map.Id("id", ids.Drawings),
            map.Text("label"),
            map.References("steps", ids.Steps),
            Parts(map.OneOrMore("shows", $"what stands on the bench, {Described}", needed: true), "the bench", ApparatusRules.OnBench),
            map.At);
        int parts = drawing.Parts.Count();
        if (parts > ApparatusRules.MostParts)
        {
            faults.Add(map.At, $"a drawing has at most {ApparatusRules.MostParts} parts, so that each can be labelled, and this has {parts}; make two of it");
        }

        return drawing;
    }

    /// <summary>Parts that stand side by side on a surface.</summary>
    private IReadOnlyList<DrawnPart> Parts(IReadOnlyList<FileNode> nodes, string surface, IReadOnlyList<Apparatus> allowed) =>
        [.. nodes.Select(node => Part(node, $"on {surface}", allowed, stands: (surface, allowed))).OfType<DrawnPart>()];

    /// <summary>Parts that another joins, in their order.</summary>
    private IReadOnlyList<DrawnPart> Joined(IReadOnlyList<FileNode> nodes, Apparatus kind, IReadOnlyList<Apparatus> allowed) =>
        [.. nodes.Select(node => Part(node, $"joined by {Article(kind)}", allowed, stands: null)).OfType<DrawnPart>()];

    /// <summary>One part, or null where it is none, which is noted.</summary>
    /// <param name="node">A word, or keys with values.</param>
    /// <param name="where">Where it is, in words.</param>
    /// <param name="allowed">What may be there.</param>
    /// <param name="stands">The surface that it shares with what is beside it, or null where there is room for it alone.</param>
    private DrawnPart? Part(
        FileNode node, string where, IReadOnlyList<Apparatus> allowed, (string Surface, IReadOnlyList<Apparatus> Allowed)? stands)
    {
        int before = faults.Count;
        var named = new FileMap(Written(node), "a part of a drawing", faults);
        Apparatus kind = named.Word("part", ApparatusRules.Words);
        if (faults.Count > before || node is UnreadableNode)
        {
            return null;
        }

        if (!allowed.Contains(kind))
        {
            faults.Add(node.At, $"{Article(kind)} cannot be {where}; expected {string.Join(", ", allowed.Select(ApparatusRules.WordOf))}");
            return null;
        }

        var map = new FileMap(Written(node), Article(kind), faults);
        map.Find("part");
        var part = new DrawnPart(kind, Label(map) ?? ApparatusRules.LabelOf(kind), State(map, kind), Others(map, kind, stands), node.At);
        map.Close();
        return part;
    }

    private string? Label(FileMap map)
    {
        string? label = map.OptionalText("label");
        if (label is not null && (label.Length > ApparatusRules.LongestLabel || label.Split(' ').Any(word => word.Length > ApparatusRules.LongestWord)))
        {
            faults.Add(
                map.Find("label")!.At,
                $"a label beside a drawing has at most {ApparatusRules.LongestLabel} characters, and its longest word {ApparatusRules.LongestWord}; say it shorter");
        }

        return label;
    }

    private static DrawnState State(FileMap map, Apparatus kind) => new(
        kind == Apparatus.Lid && map.Flag("ajar"),
        kind is Apparatus.Burner or Apparatus.SpiritBurner or Apparatus.Candle && map.Flag("flame"),
        ApparatusRules.IsContents(kind) && kind != Apparatus.Ribbon ? map.OptionalNumber("level", NumberRange.Filling) : null);

    private Dictionary<DrawnPlace, IReadOnlyList<DrawnPart>> Others(
        FileMap map, Apparatus kind, (string Surface, IReadOnlyList<Apparatus> Allowed)? stands)
    {
        var others = new Dictionary<DrawnPlace, IReadOnlyList<DrawnPart>>();
        foreach ((DrawnPlace place, string key) in Keys)
        {
            IReadOnlyList<Apparatus> allowed = ApparatusRules.At(kind, place);
            if (place == DrawnPlace.Beside && stands is { } shared)
            {
                others[place] = Parts(map.OneOrMore(key, Described), shared.Surface, shared.Allowed);
            }
            else if (ApparatusRules.TakesMany(kind, place))
            {
                others[place] = place == DrawnPlace.On ? Parts(map.OneOrMore(key, Described), Article(kind), allowed) : Joined(map.OneOrMore(key, Described), kind, allowed);
            }
            else if (allowed.Count > 0)
            {
                string where = place switch { DrawnPlace.Holds => "held by", DrawnPlace.Joins => "joined to", _ => key };
                others[place] = Few(map.OneOrMore(key, Described), $"{where} {Article(kind)}", allowed, ApparatusRules.Most(kind, place));
            }
        }

        return others;
    }

    /// <summary>The one part at a place, or the one solid and the one liquid in a vessel.</summary>
    private List<DrawnPart> Few(IReadOnlyList<FileNode> nodes, string where, IReadOnlyList<Apparatus> allowed, int most)
    {
        var parts = new List<DrawnPart>();
        foreach (DrawnPart part in nodes.Select(node => Part(node, where, allowed, stands: null)).OfType<DrawnPart>())
        {
            DrawnPart[] there = [.. parts.Where(p => (p.Kind == Apparatus.Liquid) == (part.Kind == Apparatus.Liquid))];
            if (there.Length < most)
            {
                parts.Add(part);
                continue;
            }

            string room = ApparatusRules.IsContents(part.Kind) ? "one solid and one liquid at most" : most > 1 ? $"room for {most} parts" : "one part at most";
            faults.Add(part.At, $"there is {room} {where}, and {Article(there[0].Kind)} is there already, on line {there[0].At.Line}");
        }

        return parts;
    }

    /// <summary>A word alone is a part without further keys.</summary>
    private static FileNode Written(FileNode node) => node is ScalarNode word
        ? new MapNode([new FileEntry(new ScalarNode("part", Plain: true, node.At), word)], node.At)
        : node;

    private static string Article(Apparatus kind) => kind switch
    {
        Apparatus.Heat or Apparatus.Tongs or Apparatus.Powder or Apparatus.Crystals or Apparatus.Leads or Apparatus.Gas => ApparatusRules.WordOf(kind),
        Apparatus.Ammeter => $"an {ApparatusRules.WordOf(kind)}",
        _ => $"a {ApparatusRules.WordOf(kind)}",
    };
}
