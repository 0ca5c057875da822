using System.Globalization;

namespace Calx.Practicals.Definition.Source;

/// <summary>Reads the numbers that differ from group to group, and the variants that change them.</summary>
internal sealed class ParameterReader(IdTables ids, FaultList faults)
{
    public IReadOnlyList<Parameter> Parameters(FileMap root) => root.Each("parameters", "a parameter", Parameter);

    public IReadOnlyList<Arm> Arms(FileMap root)
    {
        IReadOnlyList<Arm> arms = root.Each("arms", "an arm", Arm, needed: false);
        if (arms.FirstOrDefault(a => a.Id == "ordinary") is Arm reserved)
        {
            faults.Add(reserved.At, "'ordinary' is what groups do that do no arm; give this arm another id");
        }

        Arm? without = arms.FirstOrDefault(a => a.Share is null);
        double sum = arms.Sum(a => a.Share ?? 0);
        if (without is not null && sum > 0)
        {
            faults.Add(without.At, $"the arm '{without.Id}' has no share, and others have one; give every arm a 'share' of the groups, or none");
        }
        else if (sum > 1 + 1e-9)
        {
            faults.Add(arms[0].At, string.Create(
                CultureInfo.InvariantCulture, $"the shares of the arms add up to {sum:0.###}; expected 1 at most: what is left of 1 does the practical the ordinary way"));
        }

        return arms;
    }

    /// <summary>Laws that parameters follow instead of their own: parameter id to law.</summary>
    public IReadOnlyList<ParameterSetting> Settings(FileMap map, FileNode value)
    {
        var settings = new List<ParameterSetting>();
        foreach (FileEntry entry in new FileMap(value, "settings, parameter to law", faults).Pairs())
        {
            if (map.ReferenceOf(entry.Key, ids.Parameters) is string parameter)
            {
                settings.Add(new ParameterSetting(parameter, map.LawOf(entry.Value), entry.Key.At));
            }
        }

        if (value is MapNode { Entries.Count: 0 })
        {
            faults.Add(value.At, "no parameter is set here; expected at least one, with its law");
        }

        return settings;
    }

    private Parameter Parameter(FileMap map) => new(
        map.Id("id", ids.Parameters, inFormulas: true),
        map.Text("label"),
        map.OptionalText("unit"),
        map.OptionalNumber("ideal", NumberRange.Any),
        map.LawAt("law"),
        map.Flag("shared"),
        map.Provenance(),
        map.At);

    private Arm Arm(FileMap map) => new(
        map.Id("id", ids.Arms),
        map.Text("label"),
        map.OptionalNumber("share", NumberRange.ShareAboveZero),
        map.Need("set", "parameters with their laws in this arm") is FileNode value ? Settings(map, value) : [],
        map.Provenance(),
        map.At);
}
