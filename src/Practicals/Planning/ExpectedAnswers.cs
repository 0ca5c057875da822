using Calx.Chemistry.Elements;
using Calx.Measurement.Expressions;
using Calx.Measurement.Weighing;
using Calx.Practicals.Clock;
using Calx.Practicals.Definition;
using Calx.Practicals.Inference;
using Calx.Practicals.Model.Faults;
using Calx.Practicals.Model.Simulation;
using Calx.Practicals.Planning.Curves;

namespace Calx.Practicals.Planning;

/// <summary>
/// What the groups of a plan will probably work out: each answer from the readings to expect, and where the answers of most groups
/// will lie, by the model with its faults.
/// </summary>
public static class ExpectedAnswers
{
    private const int Draws = 2000;

    /// <summary>Works them out.</summary>
    /// <param name="plan">The plan.</param>
    /// <param name="weights">Atomic weights for the molar masses.</param>
    /// <param name="seed">Which of the possible groups.</param>
    /// <returns>The answers that the plan's readings give, in the practical's order.</returns>
    public static IReadOnlyList<ExpectedAnswer> Of(Plan plan, AtomicWeights weights, ulong seed = 1)
    {
        ArgumentNullException.ThrowIfNull(plan);
        ArgumentNullException.ThrowIfNull(weights);
        PlanSettings settings = plan.Settings;
        Dictionary<string, double>[] drawn =
        [
            .. SimulatedClass.Draw(
                new Circumstances(settings.Practical, settings.AllConditions), weights,
                new SimulationPlan(Draws, settings.Balances[0], sampleInGrams: settings.SampleInGrams, notesObservations: false), seed)
                .Groups.Select(g => Last(g.Readings.Where(r => !settings.Unread.Contains(r.Weighing.Reading)).Select(r => (r.Weighing.Reading, (double)r.Written.Value)))),
        ];
        var worked = new WorkedAnswers(settings.Practical, weights);
        Dictionary<string, double> example = worked.Of(ReadingsOf(plan));
        Dictionary<string, double>[] all = [.. drawn.Select(d => worked.Of(d))];
        return
        [
            .. settings.Practical.Answers.Where(a => example.ContainsKey(a.Id) || OffCurve(a, plan) is not null).Select(answer =>
            {
                if (OffCurve(answer, plan) is CurveOutlookQuantity read)
                {
                    return new ExpectedAnswer(answer, read.Median, read.Low, read.High);
                }

                double[] values = [.. all.Where(a => a.ContainsKey(answer.Id)).Select(a => a[answer.Id]).Order()];
                return new ExpectedAnswer(answer, example[answer.Id], values[(int)(0.025 * (values.Length - 1))], values[(int)(0.975 * (values.Length - 1))]);
            }),
        ];
    }

    /// <summary>What is read straight off the curve, or null.</summary>
    private static CurveOutlookQuantity? OffCurve(AnswerDefinition answer, Plan plan) =>
        answer.Formula is NameTerm name && plan.Settings.Practical.Series is not null ? plan.Curve?.Find(name.Name) : null;

    /// <summary>The readings that the worked values start from, as the balance shows them, by id; a repeated one is its last.</summary>
    /// <param name="plan">The plan.</param>
    public static IReadOnlyDictionary<string, double> ReadingsOf(Plan plan)
    {
        ArgumentNullException.ThrowIfNull(plan);
        return Last(plan.ExpectedReadings.Where(r => r.Weighing.Occurrence <= plan.Settings.Heatings)
            .Select(r => (r.Weighing.Reading, Shown(r.Typical, plan.Settings.Balances[0]))));
    }

    private static double Shown(double grams, Balance balance) => Math.Round(grams / balance.ResolutionInGrams) * balance.ResolutionInGrams;

    /// <summary>In a formula a repeated reading stands for its last weighing.</summary>
    private static Dictionary<string, double> Last(IEnumerable<(string Reading, double Grams)> readings)
    {
        var last = new Dictionary<string, double>(StringComparer.Ordinal);
        foreach ((string reading, double grams) in readings)
        {
            last[reading] = grams;
        }

        return last;
    }
}
