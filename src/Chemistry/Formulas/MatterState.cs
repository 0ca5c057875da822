namespace Calx.Chemistry.Formulas;

/// <summary>The state written behind a formula.</summary>
public enum MatterState
{
    /// <summary>No state is written.</summary>
    NotSaid,

    /// <summary>Solid, (s).</summary>
    Solid,

    /// <summary>Liquid, (l).</summary>
    Liquid,

    /// <summary>Gas, (g).</summary>
    Gas,

    /// <summary>Dissolved in water, (aq).</summary>
    Aqueous,
}
