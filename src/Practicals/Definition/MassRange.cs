namespace Calx.Practicals.Definition;

/// <summary>What a part weighs, in g.</summary>
public sealed class MassRange(double typical, double low, double high)
{
    /// <summary>The mass that is met most often, in g.</summary>
    public double Typical { get; } = typical;

    /// <summary>The least mass met, in g.</summary>
    public double Low { get; } = low;

    /// <summary>The greatest mass met, in g.</summary>
    public double High { get; } = high;
}
