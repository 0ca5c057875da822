using Calx.Chemistry.Elements;
using Calx.Measurement.Expressions;
using Calx.Practicals.Clock;
using Calx.Practicals.Definition;
using Calx.Practicals.Inference;
using Calx.Practicals.Readings;

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
    /// <param name="series">Mass against time; null where the practical takes none.</param>
    public CatchUpPack Of(
        CatchUpStudent student, IReadOnlyList<PackReading> readings, PackTruth truth, IReadOnlyList<PackDecision>? kept = null, GroupSeries? series = null)
    {
        ArgumentNullException.ThrowIfNull(student);
        ArgumentNullException.ThrowIfNull(readings);
        ArgumentNullException.ThrowIfNull(truth);
        return new CatchUpPack(
            student, readings, truth, kept ?? decisions.Of(readings), [.. answers.Of(readings), .. OffCurve(series)], answers.TrueValuesOf(readings))
        {
            Series = series,
        };
    }

    /// <summary>Answers that are read off the student's own curve.</summary>
    private IEnumerable<PackAnswer> OffCurve(GroupSeries? series)
    {
        var balance = plan.Balances[0];
        IReadOnlyDictionary<string, CurveReadOff> read = CurveReadOff.Of(plan.Practical, series, balance.ResolutionInGrams, balance.RepeatabilityInGrams);
        foreach (AnswerDefinition answer in plan.Practical.Answers)
        {
            if (answer.Formula is NameTerm name && read.TryGetValue(name.Name, out CurveReadOff? right))
            {
                yield return new PackAnswer(1, answer, right.Value, right.Low, right.High);
            }
        }
    }
}
