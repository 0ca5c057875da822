namespace Calx.Practicals.Inference.Posterior;

/// <summary>Ways in which a group's readings may have come about, but those beside which others are overwhelming.</summary>
internal sealed class AtomList
{
    /// <summary>Least weight beside the greatest, as a natural logarithm: 2e-4. All that is left out together stays well
    /// below a thousandth.</summary>
    public const double Depth = 8.5;

    private readonly List<Atom> kept = [];
    private double greatest = double.NegativeInfinity;

    /// <summary>Least weight that is still taken.</summary>
    public double Least => greatest - Depth;

    /// <summary>Takes note of a weight that some atom has.</summary>
    public void Note(double logWeight) => greatest = Math.Max(greatest, logWeight);

    /// <summary>Takes an atom, unless it weighs too little.</summary>
    public void Add(Atom atom, double logWeight)
    {
        if (logWeight < Least)
        {
            return;
        }

        Note(logWeight);
        atom.LogWeight = logWeight;
        kept.Add(atom);
    }

    /// <summary>Those that weigh enough, in the order in which they came.</summary>
    public IReadOnlyList<Atom> Heavy() => kept.FindAll(a => a.LogWeight >= Least);
}
