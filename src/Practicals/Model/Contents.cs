namespace Calx.Practicals.Model;

/// <summary>What one place holds, in g: each material, free water, and what does not belong there (soot, grit).</summary>
internal sealed class Contents(int materials)
{
    private readonly double[] masses = new double[materials];

    /// <summary>Free water in g.</summary>
    public double Water { get; set; }

    /// <summary>Mass in g that takes no part: soot, grit.</summary>
    public double Foreign { get; set; }

    /// <summary>All that is on the pan with the place, in g.</summary>
    public double Total => masses.Sum() + Water + Foreign;

    /// <summary>Mass of a material in g, by its place in the practical's list.</summary>
    public double this[int material]
    {
        get => masses[material];
        set => masses[material] = value;
    }
}
