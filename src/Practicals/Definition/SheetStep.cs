namespace Calx.Practicals.Definition;

/// <summary>A sentence that tells a group what to do.</summary>
public sealed class SheetStep(string say, IReadOnlyList<string> at, FilePosition position)
{
    /// <summary>Stands in the sentence for the mass of the sample, which the plan decides.</summary>
    public const string Sample = "{sample}";

    /// <summary>Stands in it for the minutes of cooling.</summary>
    public const string Cooling = "{cooling}";

    /// <summary>The sentence.</summary>
    public string Say { get; } = say;

    /// <summary>Ids of the lesson's steps that it tells of: where a plan leaves all of them out, so does the sheet. Empty for always.</summary>
    public IReadOnlyList<string> Steps { get; } = at;

    /// <summary>Where it stands in the file.</summary>
    public FilePosition At { get; } = position;
}
