namespace Calx.Practicals.Model.Program;

/// <summary>The bench in the middle of a walk: what every place holds and what was weighed. One belongs to one thread at a
/// time and is used again for the next walk.</summary>
internal sealed class BenchState(int slots, int places, int materials)
{
    private readonly int width = materials + 2;

    /// <summary>The present value of each parameter, then of each gauge.</summary>
    public double[] Slots { get; } = new double[slots];

    /// <summary>Place by place: its materials, its free water, what does not belong there; in g.</summary>
    public double[] Contents { get; } = new double[places * (materials + 2)];

    /// <summary>Where the next reading is written.</summary>
    public int Weighed { get; set; }

    /// <summary>Index of a material in a place.</summary>
    public int At(int place, int material) => (place * width) + material;

    /// <summary>Everything on the pan with a place, in g.</summary>
    public double Total(int place)
    {
        double total = 0;
        for (int i = place * width; i < (place + 1) * width; i++)
        {
            total += Contents[i];
        }

        return total;
    }

    /// <summary>An empty bench.</summary>
    public void Clear()
    {
        Array.Clear(Contents);
        Weighed = 0;
    }
}
