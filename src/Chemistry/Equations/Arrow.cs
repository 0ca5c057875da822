namespace Calx.Chemistry.Equations;

/// <summary>What stands between the two sides.</summary>
public enum Arrow
{
    /// <summary>One direction: <c>-&gt;</c>, <c>→</c> or <c>=</c>.</summary>
    Forward,

    /// <summary>Both directions: <c>&lt;=&gt;</c> or <c>⇌</c>.</summary>
    Reversible,
}
