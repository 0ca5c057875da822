using Calx.Measurement.Expressions;

namespace Calx.Practicals.Definition.Source;

/// <summary>Reads what every group reads, and the ready-made columns that may stand for it.</summary>
internal sealed class ReadingReader(IdTables ids, FaultList faults)
{
    private static readonly Dictionary<string, Instrument> Instruments = new()
    {
        ["balance"] = Instrument.Balance,
        ["clock"] = Instrument.Clock,
        ["thermometer"] = Instrument.Thermometer,
        ["volume-measure"] = Instrument.VolumeMeasure,
        ["ammeter"] = Instrument.Ammeter,
        ["coulometer"] = Instrument.Coulometer,
    };

    private static readonly Dictionary<string, ColumnKind> Kinds = new()
    {
        ["tared"] = ColumnKind.Tared,
        ["difference"] = ColumnKind.Difference,
    };

    public IReadOnlyList<ReadingDefinition> Readings(FileMap root) => root.Each("readings", "a reading", Reading);

    public IReadOnlyList<ColumnDefinition> Columns(FileMap root) =>
        root.Each("columns", "a column", Column, needed: false);

    private ReadingDefinition Reading(FileMap map)
    {
        Instrument instrument = map.Word("instrument", Instruments, Instrument.Balance);
        var reading = new ReadingDefinition(
            map.Id("id", ids.Readings, inFormulas: true),
            map.Text("label"),
            map.Text("unit"),
            instrument,
            PanOf(map),
            map.OptionalReference("gauge", ids.Gauges),
            instrument == Instrument.Balance ? null : new InstrumentReader(faults).Errors(map, instrument),
            map.OptionalWhole("repeats", 1),
            map.OptionalText("repeatLabel"),
            map.Texts("aliases"),
            map.At);
        if (instrument == Instrument.Balance && reading.Pan is { Parts: [], Places: [] })
        {
            map.Need("pan", "what stands on the balance: { parts: [...], places: [...] }");
        }
        else if (instrument != Instrument.Balance && reading.Gauge is null)
        {
            map.Need("gauge", "the gauge that this instrument shows");
        }

        return reading;
    }

    private Pan PanOf(FileMap reading)
    {
        FileMap? map = reading.Map("pan", "a pan");
        if (map is null)
        {
            return new Pan([], [], null);
        }

        var pan = new Pan(
            map.References("parts", ids.Parts),
            map.References("places", ids.Places),
            map.OptionalFormula("minus", ids.Parameters));
        map.Close();
        return pan;
    }

    private ColumnDefinition Column(FileMap map)
    {
        var column = new ColumnDefinition(
            map.Id("id", ids.Columns, inFormulas: true),
            map.Text("label"),
            map.Text("unit"),
            map.Word("kind", Kinds),
            map.Formula("stands", ids.Readings),
            map.Texts("aliases"),
            map.At);
        if (ids.Readings.Has(column.Id))
        {
            faults.Add(map.At, $"'{column.Id}' is already a reading, on line {ids.Readings.LineOf(column.Id)}");
        }

        CheckIsSum(map, column.Stands);
        return column;
    }

    /// <summary>A ready-made mass is a sum or difference of weighings: its slope in each is a constant.</summary>
    private void CheckIsSum(FileMap map, Expression stands)
    {
        if (!map.HasValue("stands", stands))
        {
            return;
        }

        // Where nothing could be read a fault is noted already.
        bool restsOnNone = stands.Names.Count == 0 && map.Find("stands") is ScalarNode written && Expression.Parse(written.Text).Succeeded;
        bool isSum = stands.MolarMasses.Count == 0 && !restsOnNone
            && stands.Names.All(name => stands.Derivative(name).Simplified().Names.Count == 0);
        if (!isSum && map.Find("stands") is FileNode { At: var at })
        {
            faults.Add(at, "a ready-made mass stands for a sum or difference of readings, such as after - empty");
        }
    }
}
