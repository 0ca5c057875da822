using Calx.Chemistry.Elements;
using Calx.Practicals.Clock;
using Calx.Practicals.Model.Simulation;

namespace Calx.Practicals.CatchUp;

/// <summary>Data of their own for those who were away, drawn from the practical's model (docs/methods/catch-up.md).</summary>
public static class CatchUpPacks
{
    /// <summary>Most students of one class; a school year has fewer.</summary>
    public const int MostStudents = 2000;

    /// <summary>Redraws of one student's data after which a class is given up.</summary>
    private const int MostRedraws = 50;

    /// <summary>Draws them. A student's data follow from the seed and the student's key alone; only where two have exactly the same
    /// readings is the one redrawn whose key comes later.</summary>
    /// <param name="plan">The plan; its first balance shows the readings.</param>
    /// <param name="weights">Atomic weights for the molar masses.</param>
    /// <param name="students">The students, no two with one key.</param>
    /// <param name="options">How.</param>
    /// <param name="besides">Packs of the same class that were handed out before: nobody gets the readings of one.</param>
    /// <returns>A pack a student, in their order; the same for any number of threads.</returns>
    /// <exception cref="ArgumentException">Two students have one key, or there are more than <see cref="MostStudents"/>.</exception>
    /// <exception cref="CannotSimulateException">The practical has no data as they were asked for.</exception>
    /// <exception cref="OperationCanceledException">The work was given up.</exception>
    public static IReadOnlyList<CatchUpPack> Of(
        PlanSettings plan, AtomicWeights weights, IReadOnlyList<CatchUpStudent> students, CatchUpOptions options, IReadOnlyList<CatchUpPack>? besides = null)
    {
        ArgumentNullException.ThrowIfNull(plan);
        ArgumentNullException.ThrowIfNull(weights);
        ArgumentNullException.ThrowIfNull(students);
        ArgumentNullException.ThrowIfNull(options);
        if (students.Count > MostStudents || students.DistinctBy(s => s.Key).Count() < students.Count)
        {
            throw new ArgumentException("Students of different keys are expected, no more than a school year has.", nameof(students));
        }

        DrawnPack[] drawn = Drawn(new PackDrawer(plan, weights, options.OddShare, options.Seed), students, options, besides ?? []);
        var working = new PackWorking(plan, weights);
        var packs = new CatchUpPack[students.Count];
        Side(packs.Length, options, i => packs[i] = working.Of(students[i], drawn[i].Readings, drawn[i].Truth, series: drawn[i].Series));
        return packs;
    }

    /// <summary>The data alone.</summary>
    internal static DrawnPack[] Drawn(PackDrawer drawer, IReadOnlyList<CatchUpStudent> students, CatchUpOptions options, IReadOnlyList<CatchUpPack> besides)
    {
        var drawn = new DrawnPack[students.Count];
        int[] redrawn = new int[drawn.Length];
        HashSet<string> taken = [.. besides.Select(p => DrawnPack.ShownBy(p.Readings))];
        for (int[] open = [.. Enumerable.Range(0, drawn.Length)]; open.Length > 0; open = Alike(drawn, redrawn, students, taken))
        {
            if (open.Any(i => redrawn[i] > MostRedraws))
            {
                throw CannotSimulateException.AllAlike(students.Count, MostRedraws);
            }

            Side(open.Length, options, i => drawn[open[i]] = drawer.Draw(students[open[i]].SeedIn(options.Seed), redrawn[open[i]]));
        }

        return drawn;
    }

    /// <summary>Those whose readings another has: of each set all but one are to be redrawn. The one that was redrawn least keeps them, then
    /// the one whose key comes first: the order of the list does not matter.</summary>
    private static int[] Alike(DrawnPack[] drawn, int[] redrawn, IReadOnlyList<CatchUpStudent> students, HashSet<string> taken)
    {
        int[] again =
        [
            .. Enumerable.Range(0, drawn.Length).GroupBy(i => drawn[i].Shown).SelectMany(same => same
                .OrderBy(i => redrawn[i]).ThenBy(i => students[i].Key, StringComparer.Ordinal).Skip(taken.Contains(same.Key) ? 0 : 1)),
        ];
        foreach (int i in again)
        {
            redrawn[i]++;
        }

        return again;
    }

    private static void Side(int count, CatchUpOptions options, Action<int> work)
    {
        try
        {
            Parallel.For(0, count, options.Parallel, work);
        }
        catch (AggregateException several)
        {
            throw several.Flatten().InnerExceptions[0];
        }
    }
}
