namespace Calx.Practicals.Definition.Source;

/// <content>Laws of parameters, and where numbers come from.</content>
internal sealed partial class FileMap
{
    private const string Law = "a law such as { normal: [0.24, 0.05] }";
    private const double SharesSlack = 1e-9;

    /// <summary>How a standing is written.</summary>
    public static IReadOnlyDictionary<string, Standing> Standings { get; } = new Dictionary<string, Standing>
    {
        ["literature"] = Standing.Literature,
        ["memory"] = Standing.Memory,
        ["common-practice"] = Standing.CommonPractice,
        ["judgement"] = Standing.Judgement,
        ["computed"] = Standing.Computed,
    };

    /// <summary>Where the numbers of this entry come from: <c>standing</c> and <c>source</c>.</summary>
    public Provenance Provenance()
    {
        int before = faults.Spoiling;
        Standing standing = Word("standing", Standings);
        string? source = OptionalText("source");
        if (standing == Standing.Literature && source is null && Find("standing") is FileNode { At: var at })
        {
            faults.Add(at, "'literature' needs its 'source': author, work, where in it");
        }

        faults.Forgive(before);
        return new Provenance(standing, source);
    }

    /// <summary>A law under a key.</summary>
    public ParameterLaw LawAt(string key) => Need(key, Law) is FileNode value ? LawOf(value) : NoLaw;

    /// <summary>The law in a node; fixed 0 stands in for one that cannot be read, which is noted.</summary>
    public ParameterLaw LawOf(FileNode value)
    {
        FileEntry? entry = new FileMap(value, "a law", faults).Single(LawKind.Keys);
        return entry is null ? NoLaw
            : entry.Key.Text == LawKind.Mixture ? MixtureOf(entry.Value)
            : NumberedLaw(LawKind.All[entry.Key.Text], entry.Value);
    }

    private static readonly ParameterLaw NoLaw = new ParameterLaw.Fixed(0);

    private ParameterLaw NumberedLaw(LawKind kind, FileNode value)
    {
        double[]? numbers = kind.Numbers.Count == 1 && value is ScalarNode
            ? NumberOf(value, NumberRange.Any) is double only ? [only] : null
            : Numbers(value, kind.Numbers);
        if (numbers is null)
        {
            return NoLaw;
        }

        if (kind.Wrong(numbers) is string wrong)
        {
            faults.Add(value.At, $"these numbers make no law: {wrong}");
            return NoLaw;
        }

        return kind.Make(numbers);
    }

    private ParameterLaw.Mixture MixtureOf(FileNode value)
    {
        var components = new List<MixtureComponent>();
        foreach (FileNode item in Items(value, "{ share: 0.6, law: { ... } }"))
        {
            var part = new FileMap(item, "a component of a mixture", faults);
            components.Add(new MixtureComponent(part.Number("share", NumberRange.ShareAboveZero), part.LawAt("law")));
            part.Close();
        }

        if (value is ListNode && (components.Count < 2 || Math.Abs(components.Sum(c => c.Share) - 1) > SharesSlack))
        {
            faults.Add(value.At, "a mixture has at least two components, and their shares add up to 1");
        }

        return new ParameterLaw.Mixture(components);
    }
}
