namespace Calx.Practicals.Definition.Source;

/// <summary>Reads how far an instrument other than a balance may be off.</summary>
internal sealed class InstrumentReader(FaultList faults)
{
    /// <summary>Units in which each instrument may show what it reads, as a file writes them.</summary>
    private static readonly Dictionary<Instrument, string[]> Units = new()
    {
        [Instrument.Clock] = ["s", "min", "h"],
        [Instrument.Thermometer] = ["°C", "K"],
        [Instrument.VolumeMeasure] = ["cm³", "dm³"],
        [Instrument.Ammeter] = ["A", "mA"],
        [Instrument.Coulometer] = ["C"],
    };

    /// <summary>The keys of a reading that is no weighing.</summary>
    public InstrumentErrors Errors(FileMap map, Instrument instrument)
    {
        if (map.Find("unit") is ScalarNode unit && !Units[instrument].Contains(unit.Text))
        {
            faults.Add(unit.At, $"'{unit.Text}' is no unit of this instrument; expected {string.Join(" or ", Units[instrument])}");
        }

        if (map.Find("pan") is FileNode pan)
        {
            faults.Add(pan.At, "only a balance has a pan; leave 'pan' out, or take the instrument away");
        }

        double resolution = map.Number("resolution", NumberRange.Step);
        return new InstrumentErrors(
            resolution == 0 ? 1 : resolution,
            map.Number("spread", NumberRange.FromZero),
            map.Number("tolerance", NumberRange.FromZero),
            map.OptionalNumber("scaleTolerance", NumberRange.Share) ?? 0,
            map.Provenance());
    }
}
