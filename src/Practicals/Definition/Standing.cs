namespace Calx.Practicals.Definition;

/// <summary>How far a number or a fact of a practical can be trusted.</summary>
public enum Standing
{
    /// <summary>A published paper, standard or handbook, named as the source.</summary>
    Literature,

    /// <summary>A textbook or handbook value given from memory.</summary>
    Memory,

    /// <summary>Common practice of the trade, no source.</summary>
    CommonPractice,

    /// <summary>The writer's judgement.</summary>
    Judgement,

    /// <summary>Computed from other numbers.</summary>
    Computed,
}
