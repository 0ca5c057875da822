namespace Calx.Practicals.Definition.Source;

/// <summary>Reads what can go wrong in a group, and what a group may have seen.</summary>
internal sealed class FaultReader(IdTables ids, FaultList faults)
{
    private const double SharesSlack = 1e-9;
    private static readonly string[] EffectKeys = ["set", "warm", "off", "pen", "gain", "zero"];

    private readonly ParameterReader parameters = new(ids, faults);

    public IReadOnlyList<FaultDefinition> Faults(FileMap root) => root.Each("faults", "a fault", Fault);

    public IReadOnlyList<Observation> Observations(FileMap root) =>
        root.Each("observations", "an observation", Observation, needed: false);

    private FaultDefinition Fault(FileMap map)
    {
        string cause = map.Id("cause", ids.Causes);
        if (map.Find("cause") is ScalarNode written && cause != "?" && !Causes.All.Contains(cause))
        {
            faults.Add(written.At, $"'{cause}' is no cause; {NearestWord.Choice(cause, Causes.All)}");
        }

        return new FaultDefinition(
            cause,
            map.Text("label"),
            map.Number("rate", NumberRange.Share),
            Effect(map),
            map.OptionalText("caution"),
            map.Provenance(),
            map.At);
    }

    private FaultEffect Effect(FileMap map)
    {
        FileNode?[] given = [.. EffectKeys.Select(map.Find)];
        int count = given.Count(value => value is not null);
        if (count != 1)
        {
            faults.Add(map.At, $"a fault has one of the keys {string.Join(", ", EffectKeys)}, which say what it does; here are {count}");
            return new FaultEffect.Set([]);
        }

        int kind = Array.FindIndex(given, value => value is not null);
        FileNode value = given[kind]!;
        return EffectKeys[kind] == "set" ? new FaultEffect.Set(parameters.Settings(map, value)) : Effect(kind, value);
    }

    private FaultEffect Effect(int kind, FileNode value)
    {
        var map = new FileMap(value, $"the effect '{EffectKeys[kind]}'", faults);
        FaultEffect effect = EffectKeys[kind] switch
        {
            "warm" => new FaultEffect.Warm(
                map.Reference("reading", ids.Readings), map.LawAt("excessInKelvin"), map.LawAt("milligramsPerKelvin")),
            "off" => new FaultEffect.Off(map.Reference("part", ids.Parts)),
            "gain" => new FaultEffect.Gain(map.Reference("reading", ids.Readings), map.LawAt("mass")),
            "zero" => new FaultEffect.Zero(map.OptionalReference("reading", ids.Readings), map.LawAt("shift")),
            _ => Pen(map),
        };
        map.Close();
        return effect;
    }

    private FaultEffect.Pen Pen(FileMap map)
    {
        int before = faults.Count;
        var pen = new FaultEffect.Pen(
            map.Number("swapped", NumberRange.Share),
            map.Number("wrongDigit", NumberRange.Share),
            map.Number("wholeGram", NumberRange.Share),
            map.OptionalNumber("droppedZero", NumberRange.Share) ?? 0);
        if (faults.Count == before && Math.Abs(pen.Swapped + pen.WrongDigit + pen.WholeGram + pen.DroppedZero - 1) > SharesSlack)
        {
            faults.Add(map.At, "the shares of the slips of the pen add up to 1");
        }

        return pen;
    }

    private Observation Observation(FileMap map)
    {
        var likelihood = new Dictionary<string, double>(StringComparer.Ordinal);
        double otherwise = 0;
        const string Expected = "probabilities, cause to probability, and 'otherwise'";
        bool stop = map.Flag("stop");
        if ((stop ? map.Find("likelihood") : map.Need("likelihood", Expected)) is FileNode value)
        {
            var inner = new FileMap(value, "a likelihood", faults);
            otherwise = inner.Number("otherwise", NumberRange.Share);
            foreach (FileEntry entry in inner.Pairs().Where(e => e.Key.Text != "otherwise"))
            {
                double? probability = map.NumberOf(entry.Value, NumberRange.Share);
                if (map.ReferenceOf(entry.Key, ids.Causes) is string cause)
                {
                    likelihood[cause] = probability ?? 0;
                }
            }
        }

        return new Observation(
            map.Id("id", ids.Observations),
            map.Text("label"),
            likelihood,
            otherwise,
            map.Texts("aliases"),
            stop,
            map.Flag("teacherOnly"),
            map.Provenance(),
            map.At);
    }
}
