namespace Calx.Practicals.Definition.Source;

/// <summary>The sections that checks across a file rest on.</summary>
internal enum FileSection
{
    /// <summary>Materials, reactions, parts, places and gauges.</summary>
    Bench,

    /// <summary>Parameters and arms.</summary>
    Parameters,

    /// <summary>Readings and columns.</summary>
    Readings,

    /// <summary>Quantities.</summary>
    Quantities,

    /// <summary>Findings.</summary>
    Findings,

    /// <summary>Conclusions.</summary>
    Conclusions,

    /// <summary>The procedure.</summary>
    Procedure,

    /// <summary>Faults and observations.</summary>
    Faults,

    /// <summary>Steps, kit, limits and hazards.</summary>
    Lesson,
}
