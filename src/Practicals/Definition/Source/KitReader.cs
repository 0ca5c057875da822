namespace Calx.Practicals.Definition.Source;

/// <summary>Reads what the class needs.</summary>
internal sealed class KitReader(IdTables ids, FaultList faults)
{
    private static readonly (string Key, KitPer Per)[] Pers =
        [("perGroup", KitPer.Group), ("perStudent", KitPer.Student), ("perClass", KitPer.Class)];

    /// <summary>One piece of kit.</summary>
    public KitItem Item(FileMap map) => new(
        map.Id("id", ids.Kit),
        map.Text("label"),
        Need(map),
        Loss(map),
        map.Flag("flame"),
        Fuel(map),
        map.At);

    private OwnFuel? Fuel(FileMap map)
    {
        bool filled = map.Flag("filledByTechnician");
        string? burns = map.OptionalReference("burns", ids.Materials);
        if (burns is null && filled)
        {
            faults.Add(map.At, "'filledByTechnician' is said of a piece that burns nothing; give 'burns', the material that it burns");
        }
        else if (burns is not null && !map.Flag("flame"))
        {
            faults.Add(map.At, "what burns has a naked flame; expected flame: true");
        }

        return burns is null ? null : new OwnFuel(burns, filled);
    }

    private KitNeed Need(FileMap map)
    {
        (string Key, KitPer Per)[] said = [.. Pers.Where(p => map.Find(p.Key) is not null)];
        if (said.Length != 1)
        {
            faults.Add(map.At, said.Length == 0
                ? "a piece of kit lacks the key 'perGroup', 'perStudent' or 'perClass': how many are needed"
                : $"a piece of kit has one of {string.Join(", ", said.Select(s => $"'{s.Key}'"))}, not several");
        }

        (string key, KitPer per) = said.Length == 0 ? Pers[0] : said[0];
        double number = said.Length == 0 ? 1 : map.Number(key, NumberRange.AboveZero);
        string? unit = map.OptionalText("unit");
        bool isSample = map.Flag("sample");
        bool isCut = map.Flag("cut");
        if ((isSample || isCut) && unit != "g")
        {
            faults.Add(map.At, "the sample, and what is cut from a coil, is measured in g; expected unit: g");
        }

        return new KitNeed(per, number, unit, isSample, isCut);
    }

    private KitLoss Loss(FileMap map)
    {
        double breaks = map.OptionalNumber("breaks", NumberRange.Share) ?? 0;
        bool startsAgain = map.Flag("startsAgain");
        if (startsAgain && breaks == 0)
        {
            faults.Add(map.At, "'startsAgain' is said of a piece that never breaks; give 'breaks', the share that does in a lesson");
        }

        return new KitLoss(map.OptionalNumber("spareShare", NumberRange.FromZero) ?? 0, breaks, startsAgain, map.Flag("ofRoom"));
    }
}
