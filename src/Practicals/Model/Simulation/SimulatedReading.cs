using Calx.Measurement.Numbers;

namespace Calx.Practicals.Model.Simulation;

/// <summary>One weighing of an invented group, from what was there to what was written.</summary>
public sealed class SimulatedReading
{
    internal SimulatedReading(
        Weighing weighing, double trueMassInGrams, double shiftInGrams, WrittenNumber displayed, WrittenNumber written)
    {
        Weighing = weighing;
        TrueMassInGrams = trueMassInGrams;
        ShiftInGrams = shiftInGrams;
        Displayed = displayed;
        Written = written;
    }

    /// <summary>Which weighing.</summary>
    public Weighing Weighing { get; }

    /// <summary>What was to be weighed: the contents and all parts that belong on the pan.</summary>
    public double TrueMassInGrams { get; }

    /// <summary>By how much faults let the balance show another mass: warmth, another zero, something foreign, a part that
    /// was not there.</summary>
    public double ShiftInGrams { get; }

    /// <summary>What the balance showed, all decimals there, in g.</summary>
    public WrittenNumber Displayed { get; }

    /// <summary>What the group wrote down, in g.</summary>
    public WrittenNumber Written { get; }

    /// <summary>Whether a slip of the pen stands between the two.</summary>
    public bool IsSlip => Written != Displayed;
}
