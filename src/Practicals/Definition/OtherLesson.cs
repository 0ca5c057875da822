namespace Calx.Practicals.Definition;

/// <summary>Which other lesson may take a step over.</summary>
public enum OtherLesson
{
    /// <summary>None: it belongs to this lesson.</summary>
    None,

    /// <summary>The lesson before.</summary>
    Before,

    /// <summary>The lesson after.</summary>
    After,
}
