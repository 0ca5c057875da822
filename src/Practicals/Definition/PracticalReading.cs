namespace Calx.Practicals.Definition;

/// <summary>What came of reading a practical's file.</summary>
public sealed class PracticalReading
{
    internal PracticalReading(
        Practical? practical, IReadOnlyList<DefinitionFault> faults, IReadOnlyList<DefinitionFault> warnings, PracticalDraft? draft = null)
    {
        Practical = practical;
        Faults = faults;
        Warnings = warnings;
        Draft = draft;
    }

    /// <summary>What could be read in spite of the faults, or null where nothing could.</summary>
    internal PracticalDraft? Draft { get; }

    /// <summary>The practical, or null where there is a fault.</summary>
    public Practical? Practical { get; }

    /// <summary>All faults, in the order of the file; empty where the practical was read.</summary>
    public IReadOnlyList<DefinitionFault> Faults { get; }

    /// <summary>What a person must look at though the practical can be used, in the order of the file.</summary>
    public IReadOnlyList<DefinitionFault> Warnings { get; }
}
