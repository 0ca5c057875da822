namespace Calx.Practicals.Definition;

/// <summary>A parameter that follows another law.</summary>
public sealed class ParameterSetting(string parameter, ParameterLaw law, FilePosition at)
{
    /// <summary>Id of the parameter.</summary>
    public string Parameter { get; } = parameter;

    /// <summary>The law that it follows instead of its own.</summary>
    public ParameterLaw Law { get; } = law;

    /// <summary>Where it stands in the file.</summary>
    public FilePosition At { get; } = at;
}
