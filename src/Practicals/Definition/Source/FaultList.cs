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

    /// <summary>How many of them leave something out that other parts of the file rest on. A missing label does not: what was
    /// meant can be used all the same for looking at the rest.</summary>
    public int Spoiling { get; private set; }

    /// <summary>Whether there is no fault so far.</summary>
    public bool IsEmpty => faults.Count == 0;

    /// <summary>The faults in the order of the file.</summary>
    public IReadOnlyList<DefinitionFault> Faults => InFileOrder(faults);

    /// <summary>The warnings in the order of the file.</summary>
    public IReadOnlyList<DefinitionFault> Warnings => InFileOrder(warnings);

    /// <summary>Notes that the file cannot be used.</summary>
    public void Add(FilePosition at, string reason)
    {
        faults.Add((at, reason));
        Spoiling++;
    }

    /// <summary>Notes that the file cannot be used, though the rest of it can be looked at.</summary>
    public void AddHarmless(FilePosition at, string reason) => faults.Add((at, reason));

    /// <summary>Takes what was noted since then for harmless.</summary>
    /// <param name="since">What <see cref="Spoiling"/> was.</param>
    public void Forgive(int since) => Spoiling = since;

    /// <summary>Notes what a person must look at though the file can be used.</summary>
    public void Warn(FilePosition at, string reason) => warnings.Add((at, reason));

    private IReadOnlyList<DefinitionFault> InFileOrder(List<(FilePosition At, string Reason)> found) =>
    [
        .. found.Distinct().OrderBy(f => f.At.Line).ThenBy(f => f.At.Column).Take(Most)
            .Select(f => new DefinitionFault(file, f.At, f.Reason)),
    ];
}
