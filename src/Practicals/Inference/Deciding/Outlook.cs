using Calx.Chemistry.Elements;
using Calx.Practicals.Inference.Posterior;

namespace Calx.Practicals.Inference.Deciding;

/// <summary>A group's posterior, thinned where it is large, with what each part says of what comes
/// next.</summary>
internal sealed class Outlook
{
    /// <summary>Most atoms that are looked at; a probability is then known to about one in a hundred.</summary>
    private const int Most = 1500;

    public Outlook(CausePosterior posterior, AtomicWeights weights)
    {
        Posterior = posterior;
        Of = new AtomOutlook(posterior.Hidden, posterior.Problem, weights);
        Atoms = posterior.Atoms.Count <= Most ? posterior.Atoms : Thinned(posterior.Atoms);
        Sum = Atoms.Sum(a => a.Weight);
    }

    private static List<Atom> Thinned(IReadOnlyList<Atom> atoms) =>
        [.. Thinning.Of(atoms, a => a.Weight, Most).Select(t => t.Atom.With(t.Steps / (double)Most))];

    /// <summary>The posterior.</summary>
    public CausePosterior Posterior { get; }

    /// <summary>What an atom says of what comes next.</summary>
    public AtomOutlook Of { get; }

    /// <summary>The atoms looked at.</summary>
    public IReadOnlyList<Atom> Atoms { get; }

    /// <summary>Their weight together, near 1.</summary>
    public double Sum { get; }

    /// <summary>Probability of what some of them have.</summary>
    public double Share(Func<Atom, bool> has) => Math.Clamp(Atoms.Where(has).Sum(a => a.Weight) / Sum, 0, 1);
}
