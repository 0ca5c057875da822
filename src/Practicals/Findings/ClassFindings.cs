using Calx.Practicals.Definition;
using Calx.Practicals.Inference;
using Calx.Practicals.Readings;
using Calx.Practicals.Texts;

namespace Calx.Practicals.Findings;

/// <summary>What a class's weighings show: group by group, pooled, and in words.</summary>
public sealed class ClassFindings
{
    internal ClassFindings(
        Practical practical,
        ClassReadings readings,
        Identifiability identifiability,
        IReadOnlyList<GroupFindings> groups,
        ClassResult result,
        EngineLanguage language)
    {
        Practical = practical;
        Readings = readings;
        Identifiability = identifiability;
        Groups = groups;
        Class = result;
        Language = language;
    }

    /// <summary>The practical.</summary>
    public Practical Practical { get; }

    /// <summary>The class's readings: columns as understood, rejected cells, notes, the balance.</summary>
    public ClassReadings Readings { get; }

    /// <summary>Which quantities the table's readings determine, and what the others lack.</summary>
    public Identifiability Identifiability { get; }

    /// <summary>Each group (and trial), in the order of the table.</summary>
    public IReadOnlyList<GroupFindings> Groups { get; }

    /// <summary>The class as a whole.</summary>
    public ClassResult Class { get; }

    /// <summary>Each way in which groups did the practical, with its own result; empty where all did it in one.</summary>
    public IReadOnlyList<ArmFindings> Arms { get; internal init; } = [];

    /// <summary>The language of all its sentences.</summary>
    public EngineLanguage Language { get; }
}
