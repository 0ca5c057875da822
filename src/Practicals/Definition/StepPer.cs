namespace Calx.Practicals.Definition;

/// <summary>Who does a step, and how often.</summary>
public enum StepPer
{
    /// <summary>Each group once in a lesson.</summary>
    Group,

    /// <summary>Each group once for each of its trials.</summary>
    Trial,

    /// <summary>The whole class together: it waits until every group is there.</summary>
    Class,
}
