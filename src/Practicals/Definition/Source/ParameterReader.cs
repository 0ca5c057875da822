namespace Calx.Practicals.Definition.Source;

/// <summary>Reads the numbers that differ from group to group, and the variants that change them.</summary>
internal sealed class ParameterReader(IdTables ids, FaultList faults)
{
    public IReadOnlyList<Parameter> Parameters(FileMap root) => root.Each("parameters", "a parameter", Parameter);

    public IReadOnlyList<Arm> Arms(FileMap root) => root.Each("arms", "an arm", Arm, needed: false);

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
        map.Provenance(),
        map.At);

    private Arm Arm(FileMap map) => new(
        map.Id("id", ids.Arms),
        map.Text("label"),
        map.Need("set", "parameters with their laws in this arm") is FileNode value ? Settings(map, value) : [],
        map.Provenance(),
        map.At);
}
