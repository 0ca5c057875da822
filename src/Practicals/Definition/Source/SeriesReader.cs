using Calx.Measurement.Statistics.Series;

namespace Calx.Practicals.Definition.Source;

/// <summary>Reads the series of a practical: mass against time.</summary>
internal sealed class SeriesReader(IdTables ids, FaultList faults)
{
    private const int MostPoints = 200;

    private static readonly Dictionary<string, bool> Units = new() { ["min"] = false, ["s"] = true };

    private static readonly Dictionary<string, CurveStart> Starts = new()
    {
        ["at-once"] = CurveStart.AtFirstReading,
        ["later"] = CurveStart.Delayed,
        ["gas-held-back"] = CurveStart.GasHeldBack,
    };

    /// <summary>The words for orders.</summary>
    public static IReadOnlyDictionary<string, KineticOrder> Orders { get; } = new Dictionary<string, KineticOrder>
    {
        ["zeroth"] = KineticOrder.Zeroth,
        ["first"] = KineticOrder.First,
        ["second"] = KineticOrder.Second,
    };

    private static readonly Dictionary<string, CurveGives> Kinds = new()
    {
        ["final-loss"] = CurveGives.FinalLoss,
        ["rate-at-start"] = CurveGives.RateAtStart,
        ["half-life"] = CurveGives.HalfLife,
        ["gas-held-back"] = CurveGives.GasHeldBack,
        ["delay"] = CurveGives.Delay,
    };

    /// <summary>The series, or null where the practical has none.</summary>
    public SeriesDefinition? Read(FileMap root)
    {
        if (root.Map("series", "a series: one reading at planned times") is not FileMap map)
        {
            return null;
        }

        bool inSeconds = map.Word("times", Units, false);
        CurveStart start = map.Word("starts", Starts, CurveStart.AtFirstReading);
        var series = new SeriesDefinition
        {
            Label = map.Text("label"),
            From = map.Reference("from", ids.Readings),
            To = map.Reference("to", ids.Readings),
            LostColumn = map.OptionalReference("lost", ids.Columns),
            Elapsed = map.Id("elapsed", ids.Parameters, inFormulas: true),
            EveryInMinutes = map.Number("every", NumberRange.AboveZero),
            UntilInMinutes = map.Number("until", NumberRange.AboveZero),
            InSeconds = inSeconds,
            Start = start,
            Order = map.Word("order", Orders),
            Scatter = Scatter(map),
            Quantities = map.Each("quantities", "a quantity of the curve", entry => Quantity(entry, inSeconds, start)),
            Aliases = map.Texts("aliases"),
            At = map.At,
        };
        CheckTimes(map, series);
        map.Close();
        return series;
    }

    private static SeriesScatter? Scatter(FileMap series)
    {
        if (series.Map("scatter", "how points near in time scatter together") is not FileMap map)
        {
            return null;
        }

        var scatter = new SeriesScatter(
            map.Number("draught", NumberRange.AboveZero), map.Number("lasts", NumberRange.AboveZero), map.Provenance());
        map.Close();
        return scatter;
    }

    private CurveQuantityDefinition Quantity(FileMap map, bool inSeconds, CurveStart start)
    {
        CurveGives gives = map.Word("is", Kinds);
        CurveStart needed = gives switch
        {
            CurveGives.GasHeldBack => CurveStart.GasHeldBack,
            CurveGives.Delay => CurveStart.Delayed,
            _ => start,
        };
        if (needed != start && map.Find("is") is FileNode { At: var at })
        {
            faults.Add(at, $"this curve has no such quantity; expected 'starts: {Starts.First(s => s.Value == needed).Key}' in the series");
        }

        string time = inSeconds ? "s" : "min";
        string unit = gives switch
        {
            CurveGives.RateAtStart => "g/" + time,
            CurveGives.HalfLife or CurveGives.Delay => time,
            _ => "g",
        };
        string id = map.Id("id", ids.Curves, inFormulas: true);
        if (ids.Readings.Has(id) || ids.Quantities.Has(id))
        {
            faults.Add(map.At, $"'{id}' is already a reading or a quantity");
        }

        return new CurveQuantityDefinition(id, map.Text("label"), unit, gives, map.At);
    }

    private void CheckTimes(FileMap map, SeriesDefinition series)
    {
        if (!(series.EveryInMinutes > 0 && series.UntilInMinutes > 0) || map.Find("until") is not FileNode { At: var at })
        {
            return;
        }

        double gaps = series.UntilInMinutes / series.EveryInMinutes;
        if (Math.Abs(gaps - Math.Round(gaps)) > 1e-6 || gaps < 4 || gaps > MostPoints)
        {
            faults.Add(at, $"from 0 to 'until' there are 4 to {MostPoints} whole gaps of 'every'; here are {gaps:0.###}");
        }

        if (series.From == series.To)
        {
            faults.Add(map.At, "'from' and 'to' are two readings: the first of the series and its last");
        }
    }
}
