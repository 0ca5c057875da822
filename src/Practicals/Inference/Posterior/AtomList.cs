namespace Calx.Practicals.Inference.Posterior;

/// <summary>Ways in which a group's readings may have come about, but those beside which others are overwhelming.</summary>
internal sealed class AtomList
{
    /// <summary>Least weight beside the greatest, as a natural logarithm: 2e-4. All that is left out together stays well
    /// below a thousandth.</summary>
    public const double Depth = 8.5;

    /// <summary>Most atoms of a group: a probability then moves by a few times 1 in 4000 at most.</summary>
    private const int Most = 4_000;

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

    /// <summary>Those that weigh enough, in the order in which they came; thinned where a coarse balance leaves so much open
    /// that there are too many.</summary>
    public IReadOnlyList<Atom> Heavy()
    {
        List<Atom> heavy = kept.FindAll(a => a.LogWeight >= Least);
        if (heavy.Count <= Most)
        {
            return heavy;
        }

        double sum = heavy.Sum(a => Math.Exp(a.LogWeight - greatest));
        double step = Math.Log(sum / Most) + greatest;
        var thinned = new List<Atom>();
        foreach ((Atom atom, int steps) in Thinning.Of(heavy, a => Math.Exp(a.LogWeight - greatest) / sum, Most))
        {
            atom.LogWeight = step + Math.Log(steps);
            thinned.Add(atom);
        }

        return thinned;
    }
}
