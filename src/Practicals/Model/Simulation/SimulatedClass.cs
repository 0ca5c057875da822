using Calx.Chemistry.Elements;
using Calx.Practicals.Definition;
using Calx.Practicals.Model.Faults;

namespace Calx.Practicals.Model.Simulation;

/// <summary>
/// An invented class: the practical's model run forwards, with all that is true of each group. The same seed gives the same
/// class on any number of threads, and a group does not depend on how many others there are (docs/methods/simulation.md).
/// </summary>
public sealed class SimulatedClass
{
    private SimulatedClass(GroupDrawer drawer, ulong seed, IReadOnlyList<SimulatedGroup> groups)
    {
        Practical = drawer.Circumstances.Practical;
        Plan = drawer.Plan;
        Seed = seed;
        Groups = groups;
        int most = groups.Max(g => g.Readings.Count);
        Weighings = drawer.Views.First(v => v.Weighings.Count >= most).Weighings;
        Numbers = drawer.Program.Dimensions.Names(Practical);
    }

    /// <summary>The practical.</summary>
    public Practical Practical { get; }

    /// <summary>What the class was to do.</summary>
    public SimulationPlan Plan { get; }

    /// <summary>Which of the possible classes.</summary>
    public ulong Seed { get; }

    /// <summary>All weighings that some group took, in order.</summary>
    public IReadOnlyList<Weighing> Weighings { get; }

    /// <summary>Names of the numbers of <see cref="SimulatedTruth.Values"/>: a parameter's id, with the round behind it where
    /// it has one for each.</summary>
    public IReadOnlyList<string> Numbers { get; }

    /// <summary>The groups in order.</summary>
    public IReadOnlyList<SimulatedGroup> Groups { get; }

    /// <summary>Invents a class.</summary>
    /// <param name="circumstances">The practical and what is said of the class.</param>
    /// <param name="weights">Atomic weights for the molar masses.</param>
    /// <param name="plan">What the class does.</param>
    /// <param name="seed">Which of the possible classes.</param>
    /// <param name="threads">Threads; 0 takes as many as there are processors. The class does not depend on it.</param>
    /// <param name="cancellation">Gives the work up.</param>
    /// <exception cref="ArgumentException">The plan's cause is none of the practical's.</exception>
    /// <exception cref="CannotSimulateException">The plan's cause can hardly count on this balance, or its sample cannot be
    /// set.</exception>
    /// <exception cref="OperationCanceledException">The work was given up.</exception>
    public static SimulatedClass Draw(
        Circumstances circumstances,
        AtomicWeights weights,
        SimulationPlan plan,
        ulong seed,
        int threads = 0,
        CancellationToken cancellation = default)
    {
        ArgumentNullException.ThrowIfNull(circumstances);
        ArgumentNullException.ThrowIfNull(weights);
        ArgumentNullException.ThrowIfNull(plan);
        ArgumentOutOfRangeException.ThrowIfNegative(threads);
        GroupDrawer[] drawers = Drawers(circumstances, weights, plan);
        var options = new ParallelOptions { CancellationToken = cancellation, MaxDegreeOfParallelism = threads == 0 ? -1 : threads };
        double[]? shared = plan.OneClass ? drawers[0].SharedOf(seed, stream: 0) : null;
        return new SimulatedClass(drawers[0], seed, Many(drawers, plan.Groups, seed, firstStream: 1, options, shared));
    }

    /// <summary>What draws the groups of each way in which the practical is done.</summary>
    internal static GroupDrawer[] Drawers(Circumstances circumstances, AtomicWeights weights, SimulationPlan plan)
    {
        var tables = new LawTableCache();
        return [.. (plan.Arms?.Ways ?? [null]).Select(arm => new GroupDrawer(circumstances.InArm(arm), weights, plan, tables))];
    }

    /// <summary>Draws groups 1, 2 ... side by side, from a stream of random numbers each, one after another.</summary>
    /// <param name="drawers">One for each way in which the practical is done.</param>
    /// <param name="count">How many.</param>
    /// <param name="seed">Which of the possible ones.</param>
    /// <param name="firstStream">The first group's stream.</param>
    /// <param name="options">Threads and cancellation.</param>
    /// <param name="shared">What the groups share; null where each is of a class of its own.</param>
    internal static SimulatedGroup[] Many(
        GroupDrawer[] drawers, int count, ulong seed, ulong firstStream, ParallelOptions options, double[]? shared = null)
    {
        ArmDivision? arms = drawers[0].Plan.Arms;
        var groups = new SimulatedGroup[count];
        groups[0] = Draw(0);   // a cause that cannot count is told once, not by every thread
        try
        {
            Parallel.For(1, count, options, i => groups[i] = Draw(i));
        }
        catch (AggregateException several)
        {
            throw several.Flatten().InnerExceptions[0];
        }

        return groups;

        SimulatedGroup Draw(int i) => drawers[arms?.WayOf(i + 1) ?? 0].Draw(seed, firstStream + (ulong)i, i + 1, shared);
    }
}
