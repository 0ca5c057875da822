namespace Calx.Practicals.Definition;

/// <summary>A number that differs from group to group, or from class to class; events use it by its id.</summary>
public sealed class Parameter(
    string id, string label, string? unit, double? ideal, ParameterLaw law, bool shared, Provenance provenance, FilePosition at)
{
    /// <summary>Its id, unique among the parameters.</summary>
    public string Id { get; } = id;

    /// <summary>What it is, for people.</summary>
    public string Label { get; } = label;

    /// <summary>Its unit, or null for a share or a pure number.</summary>
    public string? Unit { get; } = unit;

    /// <summary>Its value where the reaction is complete and nothing goes wrong; null takes the middle of the law.</summary>
    public double? Ideal { get; } = ideal;

    /// <summary>How it differs from group to group where no fault changes it; of a shared one, from class to class.</summary>
    public ParameterLaw Law { get; } = law;

    /// <summary>Whether it is the same for all groups of a class: what is in one bottle.</summary>
    public bool Shared { get; } = shared;

    /// <summary>How far its law can be trusted.</summary>
    public Standing Standing => provenance.Standing;

    /// <summary>The source of its law, or null.</summary>
    public string? Source => provenance.Source;

    /// <summary>Where it stands in the file.</summary>
    public FilePosition At { get; } = at;
}
