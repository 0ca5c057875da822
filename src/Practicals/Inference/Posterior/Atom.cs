using Calx.Practicals.Model.Faults;

namespace Calx.Practicals.Inference.Posterior;

/// <summary>One way in which a group's readings may have come about: a point, and a slip of the pen or a missing part if
/// there was one.</summary>
internal sealed class Atom(int point, FaultSet set, Disturbance? disturbance)
{
    /// <summary>The point.</summary>
    public int Point { get; } = point;

    /// <summary>Faults at work on bench and balance.</summary>
    public FaultSet Set { get; } = set;

    /// <summary>A slip or a missing part, or null.</summary>
    public Disturbance? Disturbance { get; } = disturbance;

    /// <summary>Natural logarithm of its probability times the density of the readings; later only comparable within a
    /// group.</summary>
    public double LogWeight { get; set; }

    /// <summary>Posterior probability.</summary>
    public double Weight { get; set; }

    /// <summary>Causes that count.</summary>
    public FaultSet Counting { get; set; }

    /// <summary>How far each fault moved the key difference, in g.</summary>
    public double[] Moved { get; set; } = [];

    /// <summary>Parts and amounts as the readings tell them, in g.</summary>
    public double[] Estimates { get; set; } = [];

    /// <summary>The same with another weight.</summary>
    public Atom With(double weight) => new(Point, Set, Disturbance)
    {
        LogWeight = LogWeight,
        Weight = weight,
        Counting = Counting,
        Moved = Moved,
        Estimates = Estimates,
    };
}
