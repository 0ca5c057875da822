namespace Calx.Practicals.Definition;

/// <summary>Something that the class needs.</summary>
public sealed class KitItem(
    string id, string label, KitNeed need, KitLoss loss, bool flame, OwnFuel? fuel, FilePosition at)
{
    /// <summary>Its id, unique in the kit.</summary>
    public string Id { get; } = id;

    /// <summary>What it is, for the technician.</summary>
    public string Label { get; } = label;

    /// <summary>How much is needed.</summary>
    public KitNeed Need { get; } = need;

    /// <summary>What gets lost of it.</summary>
    public KitLoss Loss { get; } = loss;

    /// <summary>Whether it burns with a naked flame.</summary>
    public bool Flame { get; } = flame;

    /// <summary>What it burns itself, where that is one of the practical's liquids; otherwise null.</summary>
    public OwnFuel? Fuel { get; } = fuel;

    /// <summary>Where it stands in the file.</summary>
    public FilePosition At { get; } = at;

    /// <summary>The same, of which another share breaks.</summary>
    internal KitItem WithBreaks(double share) => new(Id, Label, Need, new KitLoss(Loss.SpareShare, share, Loss.StartsAgain), Flame, Fuel, At);
}
