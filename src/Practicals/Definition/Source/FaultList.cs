namespace Calx.Practicals.Definition.Source;

/// <summary>The faults of one file, collected in whatever order they are found.</summary>
internal sealed class FaultList(string file)
{
    /// <summary>More are not told: by then the file is something else, and its reader has had enough.</summary>
    public const int Most = 200;

    private readonly List<(FilePosition At, string Reason)> faults = [];
    private readonly List<(FilePosition At, string Reason)> warnings = [];

    /// <summary>How many faults there are so far.</summary>
    public int Count => faults.Count;

    /// <summary>Whether there is no fault so far.</summary>
    public bool IsEmpty => faults.Count == 0;

    /// <summary>The faults in the order of the file.</summary>
    public IReadOnlyList<DefinitionFault> Faults => InFileOrder(faults);

    /// <summary>The warnings in the order of the file.</summary>
    public IReadOnlyList<DefinitionFault> Warnings => InFileOrder(warnings);

    /// <summary>Notes that the file cannot be used.</summary>
    public void Add(FilePosition at, string reason) => faults.Add((at, reason));

    /// <summary>Notes what a person must look at though the file can be used.</summary>
    public void Warn(FilePosition at, string reason) => warnings.Add((at, reason));

    private IReadOnlyList<DefinitionFault> InFileOrder(List<(FilePosition At, string Reason)> found) =>
    [
        .. found.Distinct().OrderBy(f => f.At.Line).ThenBy(f => f.At.Column).Take(Most)
            .Select(f => new DefinitionFault(file, f.At, f.Reason)),
    ];
}
