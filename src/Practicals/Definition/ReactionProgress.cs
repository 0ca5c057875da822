using Calx.Measurement.Expressions;

namespace Calx.Practicals.Definition;

/// <summary>How far a reaction goes in one event. A closed set.</summary>
public abstract record ReactionProgress
{
    private ReactionProgress(Expression amount) => Amount = amount;

    /// <summary>A formula over parameters and gauges; what it means is said by the case.</summary>
    public Expression Amount { get; }

    /// <summary>A fraction of what is left of the limiting material, 0 to 1. A rate law over elapsed time is one, such as
    /// <c>1 - exp(-rate * time)</c> with a gauge <c>time</c>.</summary>
    public sealed record Fraction : ReactionProgress
    {
        internal Fraction(Expression amount)
            : base(amount)
        {
        }
    }

    /// <summary>Moles of the limiting material, set from outside: by a charge, a time, a volume of titrant. No more reacts
    /// than there is.</summary>
    public sealed record Extent : ReactionProgress
    {
        internal Extent(Expression amount)
            : base(amount)
        {
        }
    }
}
