namespace Calx.Practicals.Findings;

/// <summary>What a sentence of a class's conclusion is about.</summary>
public enum ConclusionTopic
{
    /// <summary>That the readings are simulated and not measured.</summary>
    Simulated,

    /// <summary>That the groups did the practical in several ways.</summary>
    Arms,

    /// <summary>Whether the mass rose, fell or stayed.</summary>
    Change,

    /// <summary>The class's value of the key quantity, or why there is none.</summary>
    Value,

    /// <summary>That value against the accepted one.</summary>
    Accepted,

    /// <summary>Which of the equations the value fits.</summary>
    Equations,

    /// <summary>Which of a few numbers the value points to.</summary>
    Choice,

    /// <summary>Which formula the masses allow.</summary>
    Formula,

    /// <summary>What mass against time shows: half-life, rate and order.</summary>
    Curve,

    /// <summary>Which groups have an odd result.</summary>
    OddResults,

    /// <summary>Which groups are not counted, because their readings are not their own.</summary>
    Uncounted,

    /// <summary>Who reached constant mass, and what that leaves open.</summary>
    ConstantMass,
}
