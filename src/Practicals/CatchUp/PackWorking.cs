using Calx.Chemistry.Elements;
using Calx.Practicals.Clock;

namespace Calx.Practicals.CatchUp;

/// <summary>Works out what follows from a student's data: decisions, answers, true values. Made once for a plan; safe for several
/// threads.</summary>
/// <param name="plan">The plan.</param>
/// <param name="weights">Atomic weights for the molar masses.</param>
public sealed class PackWorking(PlanSettings plan, AtomicWeights weights)
{
    private readonly PackDecisions decisions = new(plan, weights);
    private readonly PackAnswers answers = new(plan.Practical, weights);

    /// <summary>A pack from data that were kept.</summary>
    /// <param name="student">Whose they are.</param>
    /// <param name="readings">The weighings in order.</param>
    /// <param name="truth">What went wrong.</param>
    /// <param name="kept">The decisions as they were then; null works them out.</param>
    public CatchUpPack Of(CatchUpStudent student, IReadOnlyList<PackReading> readings, PackTruth truth, IReadOnlyList<PackDecision>? kept = null)
    {
        ArgumentNullException.ThrowIfNull(student);
        ArgumentNullException.ThrowIfNull(readings);
        ArgumentNullException.ThrowIfNull(truth);
        return new CatchUpPack(student, readings, truth, kept ?? decisions.Of(readings), answers.Of(readings), answers.TrueValuesOf(readings));
    }
}
