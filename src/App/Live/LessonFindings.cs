using Calx.Chemistry.Elements;
using Calx.Practicals.Findings;
using Calx.Practicals.Readings;
using Calx.Practicals.Watching;

namespace Calx.App.Live;

/// <summary>What a lesson's readings show so far, as <c>calx analyse</c> works it out from a file.</summary>
public static class LessonFindings
{
    /// <summary>Works it out; null while no group has typed a reading.</summary>
    /// <param name="view">The lesson.</param>
    /// <param name="balances">The school's balances: the coarsest that was used decides how finely a mass is known.</param>
    /// <param name="causes">Whether causes and decisions are worked out too, which takes longer.</param>
    public static ClassFindings? Of(LessonView view, LetteredBalances balances, bool causes) =>
        Of(view, balances, new AnalysisOptions(causes, view.Room.Plan.AllConditions));

    /// <summary>The same as far as the practical's key quantity goes: no causes, and no curves through mass against time, which take longest.</summary>
    /// <param name="view">The lesson.</param>
    /// <param name="balances">The school's balances.</param>
    public static ClassFindings? OfKey(LessonView view, LetteredBalances balances) =>
        Of(view, balances, new AnalysisOptions(Causes: false, view.Room.Plan.AllConditions) { Curves = false });

    private static ClassFindings? Of(LessonView view, LetteredBalances balances, AnalysisOptions options) => ReadingsOf(view, balances) is ClassReadings readings
        ? ClassAnalysis.Of(view.Room.Plan.Practical, readings, AtomicWeights.Iupac2024, options) : null;

    /// <summary>The readings that groups took themselves; null while there are none.</summary>
    /// <param name="view">The lesson.</param>
    /// <param name="balances">The school's balances.</param>
    public static ClassReadings? ReadingsOf(LessonView view, LetteredBalances balances)
    {
        // Groups that share another's data, or go on with simulated ones, are not counted a second time.
        GroupAtWork[] groups =
        [
            .. view.Groups.Where(g => !view.State.Group(g).IsSimulated).Select(g => AtWork.Of(view, balances, g))
                .Where(g => (g.Condition.Weighs || g.Condition is GroupCondition.Finished) && g.Readings.Readings.Count > 0),
        ];
        if (groups.Length == 0)
        {
            return null;
        }

        double coarsest = groups.Max(g => g.Balance.ResolutionInGrams);
        var report = new BalanceReport(new BalanceOptions((decimal)coarsest, null), new Dictionary<string, decimal>());
        return new ClassReadings(view.Practical.Id, [.. groups.Select(g => g.Readings)], report, uncounted: Uncounted(view));
    }

    /// <summary>The groups that go on with readings that are not their own.</summary>
    public static IReadOnlyList<UncountedGroup> Uncounted(LessonView view)
    {
        return [.. view.Groups.Select(Of).OfType<UncountedGroup>()];

        UncountedGroup? Of(int number) => view.State.Group(number) switch
        {
            { IsSimulated: true } => new UncountedGroup.Simulated(Name(number)),
            { JoinedGroup: int other } when other >= 1 => new UncountedGroup.Joined(Name(number), Name(other)),
            _ => null,
        };

        static string Name(int number) => FormattableString.Invariant($"{number}");
    }
}
