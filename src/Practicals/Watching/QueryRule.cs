using Calx.Chemistry.Elements;
using Calx.Measurement.Numbers;
using Calx.Measurement.Weighing;
using Calx.Practicals.Clock;
using Calx.Practicals.Definition;
using Calx.Practicals.Inference.Posterior;
using Calx.Practicals.Model;
using Calx.Practicals.Model.Faults;
using Calx.Practicals.Readings;
using Calx.Practicals.Texts;

namespace Calx.Practicals.Watching;

/// <summary>
/// Whether a student is asked to look at a reading again (docs/methods/watching.md). A reading is most implausible when a slip
/// of the pen explains it so much better than everything else that can go wrong: results that are odd for another reason are
/// not asked about. One ordinary reading in ten is asked about as well.
/// </summary>
internal sealed class QueryRule
{
    /// <summary>Points for each set of faults, relative to the usual number: a question is no verdict, and has to be quick.</summary>
    private const double Density = 0.25;

    private readonly CauseModel model;
    private readonly IReadOnlyList<AmountPrior> amounts;
    private readonly AtomicWeights weights;
    private readonly ulong seed;
    private readonly EngineLanguage language;

    /// <summary>Makes a lesson ready.</summary>
    public QueryRule(PlanSettings plan, AtomicWeights weights, ulong seed)
    {
        this.weights = weights;
        this.seed = seed;
        language = plan.Language;
        model = new CauseModel(new Circumstances(plan.Practical, plan.AllConditions), weights, Density);
        amounts = model.PlannedAmounts(plan.SampleInGrams);
    }

    /// <summary>A reading is implausible from here on: so many times as much a slip as before anything was read (judgement; the
    /// page tells what it catches).</summary>
    public const double ImplausibleFrom = 3;

    /// <summary>Share of the ordinary readings that are asked about as well.</summary>
    public const double AskedAnyway = 0.10;

    /// <summary>Asks about a reading.</summary>
    public ReadingQuery Of(GroupAtWork group, Weighing weighing, WrittenNumber written, UInt128 entry)
    {
        ReadingDefinition reading = model.Practical.Reading(weighing.Reading);
        // What a clock or a thermometer shows has no decimals that a display prescribes: somebody reads it off.
        switch (reading.IsWeighing ? group.Balance.Check(written) : new ReadingCheck.Shown())
        {
            case ReadingCheck.TooManyDecimals or ReadingCheck.ZerosNotWritten:
                return new ReadingQuery.WrongDecimals(group.Balance.Decimals, language);
            case ReadingCheck.BetweenSteps:
                return new ReadingQuery.LookAgain(isImplausible: true, language);
            default:
                break;
        }

        if (SlipFactor(group, weighing, written) >= ImplausibleFrom)
        {
            return new ReadingQuery.LookAgain(isImplausible: true, language);
        }

        return IsAskedAnyway(seed, entry) ? new ReadingQuery.LookAgain(isImplausible: false, language) : new ReadingQuery.None();
    }

    /// <summary>By how much the readings so far, this one among them, multiply the odds that this one is a slip of the pen.</summary>
    public double SlipFactor(GroupAtWork group, Weighing weighing, WrittenNumber written)
    {
        int pen = Pen(model.Practical);
        if (pen < 0)
        {
            return 0;
        }

        BalanceReport balance = BalanceReport.Of(group.Balance);
        var taken = new TakenReading(weighing.Reading, weighing.Occurrence, written, model.Practical.Reading(weighing.Reading).Unit);
        var readings = new GroupReadings(
            group.Readings.Name, group.Readings.Trial, [.. group.Readings.Readings.Where(r => r.Id != taken.Id), taken], remarks: group.Readings.Remarks);
        GroupProblem problem = GroupProblem.Of(model.Hidden, readings, balance, amounts, silenceCounts: false, weights);
        IReadOnlyList<Atom> atoms = CauseSearch.Of(model.Hidden, problem);
        int row = Array.FindIndex(problem.Rows, r => r.Id == taken.Id);
        double most = atoms.Max(a => a.LogWeight);
        double slips = 0;
        double all = 0;
        foreach (Atom atom in atoms)
        {
            double weight = Math.Exp(atom.LogWeight - most);
            all += weight;
            bool slip = atom.Disturbance is Disturbance.Slip s ? s.Row == row
                : atom.Disturbance is Disturbance.Unreadable u && (u.Row == row || u.Other == row);
            slips += slip ? weight : 0;
        }

        double prior = model.Hidden.Circumstances.RateOf(pen) / problem.Rows.Count(r => r.IsReading);
        return prior > 0 ? slips / Math.Max(all - slips, double.Epsilon) / (prior / (1 - prior)) : 0;
    }

    private static int Pen(Practical practical)
    {
        for (int f = 0; f < practical.Faults.Count; f++)
        {
            if (practical.Faults[f].Effect is FaultEffect.Pen)
            {
                return f;
            }
        }

        return -1;
    }

    /// <summary>Ordinary readings are chosen by the id of their entry, so that sending one again asks the same.</summary>
    public static bool IsAskedAnyway(ulong seed, UInt128 entry) =>
        new LessonDraws(seed ^ (ulong)(entry >> 64) ^ (ulong)(entry & ulong.MaxValue), 0).Even(0, 0) < AskedAnyway;
}
