using Calx.Measurement.Expressions;

namespace Calx.Practicals.Definition.Source;

/// <summary>Reads what happens, in order. Each event is a map with one key, which names it.</summary>
internal sealed class EventReader
{
    private static readonly Dictionary<string, StopRule> StopRules = new()
    {
        ["constant-mass"] = StopRule.ConstantMass,
        ["all-rounds"] = StopRule.AllRounds,
    };

    private readonly IdTables ids;
    private readonly FaultList faults;
    private readonly Dictionary<string, Func<FileMap, ProcedureEvent>> kinds;

    public EventReader(IdTables ids, FaultList faults)
    {
        this.ids = ids;
        this.faults = faults;
        kinds = new()
        {
            ["wet"] = map => new WetEvent(Formula(map, "water"), In(map), map.At),
            ["dry"] = map => new DryEvent(In(map), Formula(map, "share"), map.At),
            ["add"] = Add,
            ["move"] = Move,
            ["react"] = React,
            ["lose"] = map => new LoseEvent(In(map), Materials(map), Formula(map, "share"), map.At),
            ["gain"] = map => new GainEvent(Formula(map, "mass"), In(map), map.At),
            ["set"] = map => new SetEvent(map.Reference("gauge", ids.Gauges), Formula(map, "to"), map.At),
            ["repeat"] = Repeat,
        };
    }

    public IReadOnlyList<ProcedureEvent> Events(FileMap map, string key) =>
        [.. map.Each(key, "an event", Event).OfType<ProcedureEvent>()];

    private ProcedureEvent? Event(FileMap map)
    {
        FileEntry? entry = map.Single(["read", .. kinds.Keys]);
        if (entry is null)
        {
            return null;
        }

        if (entry.Key.Text == "read")
        {
            return map.ReferenceOf(entry.Value, ids.Readings) is string id ? new ReadEvent(id, entry.Key.At) : null;
        }

        var inner = new FileMap(entry.Value, $"a '{entry.Key.Text}' event", faults);
        ProcedureEvent read = kinds[entry.Key.Text](inner) with { At = entry.Key.At };
        inner.Close();
        return read;
    }

    private AddEvent Add(FileMap map)
    {
        var with = new List<AddedShare>();
        foreach (FileEntry entry in map.Map("with", "shares, material to share")?.Pairs() ?? [])
        {
            if (map.ReferenceOf(entry.Key, ids.Materials) is string material)
            {
                with.Add(new AddedShare(material, map.FormulaOf(entry.Value, ids.Parameters, ids.Gauges)));
            }
        }

        return new AddEvent(
            map.Reference("material", ids.Materials),
            map.Reference("to", ids.Places),
            Formula(map, "mass"),
            with,
            map.At);
    }

    private MoveEvent Move(FileMap map) => new(
        map.Reference("from", ids.Places),
        map.Reference("to", ids.Places),
        Materials(map),
        Formula(map, "share"),
        map.At);

    private ReactEvent React(FileMap map) => new(
        map.Reference("reaction", ids.Reactions),
        In(map),
        Progress(map),
        map.OptionalFormula("escapes", ids.Parameters, ids.Gauges),
        map.OptionalFormula("cap", ids.Parameters, ids.Gauges),
        map.At);

    private ReactionProgress Progress(FileMap map)
    {
        Expression? fraction = map.OptionalFormula("fraction", ids.Parameters, ids.Gauges);
        Expression? extent = map.OptionalFormula("extent", ids.Parameters, ids.Gauges);
        Expression? rate = new RateLawReader(ids).Fraction(map);
        if (new[] { fraction, extent, rate }.Count(given => given is not null) != 1)
        {
            faults.Add(map.At, "a reaction goes on by a 'fraction' of what is left, by an 'extent' in moles, or at a 'rate': give one of them");
        }

        fraction ??= rate;
        return extent is null ? new ReactionProgress.Fraction(fraction ?? Expression.Number(0)) : new ReactionProgress.Extent(extent);
    }

    private RepeatEvent Repeat(FileMap map) => new(
        map.Whole("most", 1), map.Word("until", StopRules), Events(map, "do"), map.At);

    private string In(FileMap map) => map.Reference("in", ids.Places);

    private IReadOnlyList<string> Materials(FileMap map) => map.References("materials", ids.Materials);

    private Expression Formula(FileMap map, string key) => map.Formula(key, ids.Parameters, ids.Gauges);
}
