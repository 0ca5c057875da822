namespace Calx.Practicals.Definition;

/// <summary>Something said of a whole class that changes what is to be expected of its groups: 'crucibles fired', 'a careful
/// class'.</summary>
public sealed class ConditionDefinition(
    string id,
    string label,
    IReadOnlyDictionary<string, double> rates,
    IReadOnlyList<ParameterSetting> settings,
    Provenance provenance,
    FilePosition at)
{
    /// <summary>Its id, unique among the conditions.</summary>
    public string Id { get; } = id;

    /// <summary>What it says, for people.</summary>
    public string Label { get; } = label;

    /// <summary>Share of the groups, 0 to 1, by cause: in place of the faults' own rates.</summary>
    public IReadOnlyDictionary<string, double> Rates { get; } = rates;

    /// <summary>Laws of parameters in place of their own.</summary>
    public IReadOnlyList<ParameterSetting> Settings { get; } = settings;

    /// <summary>How far these numbers can be trusted.</summary>
    public Standing Standing => provenance.Standing;

    /// <summary>Their source, or null.</summary>
    public string? Source => provenance.Source;

    /// <summary>Where it stands in the file.</summary>
    public FilePosition At { get; } = at;
}
