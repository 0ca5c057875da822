namespace Calx.Practicals.Definition;

/// <summary>What gets lost of a piece of kit in a lesson.</summary>
public sealed class KitLoss(double spareShare, double breaks, bool startsAgain, bool isOfRoom = false)
{
    /// <summary>Stock on top of what is used up, as a share of the class's need, from 0.</summary>
    public double SpareShare { get; } = spareShare;

    /// <summary>Probability that a piece breaks in a lesson, 0 up to 1.</summary>
    public double Breaks { get; } = breaks;

    /// <summary>Whether a group whose piece breaks has lost its sample and starts again.</summary>
    public bool StartsAgain { get; } = startsAgain;

    /// <summary>Whether it stands in the room (an oven, a fume cupboard), so that no spare is put out.</summary>
    public bool IsOfRoom { get; } = isOfRoom;
}
