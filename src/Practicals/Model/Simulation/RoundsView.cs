using Calx.Practicals.Definition;
using Calx.Practicals.Model.Faults;
using Calx.Practicals.Model.Program;

namespace Calx.Practicals.Model.Simulation;

/// <summary>The weighings of one number of rounds, with what is asked of each looked up once.</summary>
internal sealed class RoundsView
{
    public RoundsView(GroupDrawer drawer, int rounds, string? repeated)
    {
        Practical practical = drawer.Circumstances.Practical;
        Rounds = rounds;
        Weighings = drawer.Program.Weighings(rounds);
        Coefficients = drawer.Rule.CoefficientsOf(Weighings);
        SampleCoefficients = drawer.Rule.SampleCoefficientsOf(Weighings);
        Parts = [.. Weighings.Select(w => PartsAt(practical, w))];
        IReadOnlyList<Weighing> all = drawer.Program.Weighings(drawer.Most);
        NoiseAt = [.. Weighings.Select(w => all.Select((a, i) => (a, i)).First(x => x.a == w).i)];
        Displays = [.. Weighings.Select(w => drawer.Displays[w.Reading])];
        Instruments = [.. Weighings.Select(w => Array.IndexOf(drawer.Instruments, practical.Reading(w.Reading).Gauge))];
        int[] of = [-1, -1, .. Enumerable.Range(0, Weighings.Count).Where(i => Weighings[i].Reading == repeated)];
        LastTwo = (of[^2], of[^1]);
    }

    /// <summary>Rounds of heating.</summary>
    public int Rounds { get; }

    /// <summary>The weighings, in order.</summary>
    public IReadOnlyList<Weighing> Weighings { get; }

    /// <summary>The key difference's coefficient at each.</summary>
    public double[] Coefficients { get; }

    /// <summary>The sample's coefficient at each.</summary>
    public double[] SampleCoefficients { get; }

    /// <summary>Places in the practical's list of the parts on the pan at each.</summary>
    public int[][] Parts { get; }

    /// <summary>Place of each among the weighings of most rounds: the same weighing has the same noise.</summary>
    public int[] NoiseAt { get; }

    /// <summary>What each is taken with.</summary>
    public ReadingDisplay[] Displays { get; }

    /// <summary>Place of the gauge that each shows, in the drawer's list of instruments; -1 for a weighing.</summary>
    public int[] Instruments { get; }

    /// <summary>Places of the last two weighings of the reading that is repeated to constant mass; -1 where there is none.</summary>
    public (int Before, int Last) LastTwo { get; }

    private static int[] PartsAt(Practical practical, Weighing weighing) =>
    [
        .. Enumerable.Range(0, practical.Parts.Count)
            .Where(p => practical.Reading(weighing.Reading).Pan.Parts.Contains(practical.Parts[p].Id)),
    ];
}
