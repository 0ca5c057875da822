using Calx.Practicals.Definition;
using Calx.Practicals.Inference.Posterior;
using Calx.Practicals.Model.Faults;
using Calx.Practicals.Texts;

namespace Calx.Practicals.Inference.Deciding;

/// <summary>Which of the practical's actions tells the causes apart best: among those that tell at least half as much as the
/// best, the one that tells most for each minute.</summary>
internal sealed class NextStepRule(Outlook outlook, IReadOnlyList<Observation> seen)
{
    /// <summary>Less than this, in bits, is not worth a minute.</summary>
    private const double LeastBits = 0.03;

    /// <summary>A record that was misread shows it so often when it is looked at again (judgement).</summary>
    private const double FindsSlip = 0.8;

    private readonly Practical practical = outlook.Posterior.Hidden.Circumstances.Practical;
    private readonly CausePosterior posterior = outlook.Posterior;
    private readonly DecisionTexts texts = new(outlook.Posterior.Language);

    /// <summary>Chooses.</summary>
    public NextStep Choose()
    {
        if (seen.Any(o => o.Stop))
        {
            return new NextStep.None(texts.FirstNoted);
        }

        (ActionDefinition Action, double Bits)[] all = [.. practical.Actions.Select(a => (a, BitsOf(a))).Where(x => x.Item2 >= LeastBits)];
        if (all.Length == 0)
        {
            return new NextStep.None(posterior.AsExpected >= 0.5 ? texts.NothingOpen : texts.NoActionHelps);
        }

        double best = all.Max(x => x.Bits);
        (ActionDefinition action, double bits) = all.Where(x => x.Bits >= best / 2).OrderByDescending(x => x.Bits / x.Action.Minutes).First();
        return new NextStep.Do(action.Id, action.Label, action.Minutes, bits, texts.TellsMost(action.Minutes.InFigures("0.#")));
    }

    private double BitsOf(ActionDefinition action)
    {
        int last = outlook.Of.LastRepeated();
        bool heated = last >= 0 && posterior.Problem.Rows.Any(r => r.IsReading && r.Weighings[0].Weighing == last);
        double deviation = Math.Sqrt(posterior.Problem.Rows.Select(r => r.Variance).DefaultIfEmpty(1e-4).Max() * 1.5);
        double width = Math.Max(posterior.Problem.DivisionInGrams, deviation / 3);
        return action.Kind switch
        {
            ActionKind.Reheat when heated && MayReheat => InformationGain.OfWeighing(outlook, outlook.Of.AfterReheat, deviation, width),
            ActionKind.Reweigh when heated => InformationGain.OfWeighing(outlook, outlook.Of.AfterCooling, deviation, width),
            ActionKind.Reread => InformationGain.OfFew(outlook, Reread),
            ActionKind.Zero => InformationGain.OfWeighing(outlook, outlook.Of.ZeroOf, deviation, width),
            ActionKind.WithoutPart when heated => InformationGain.OfFew(outlook, a => WithoutPart(a, action.Part!)),
            ActionKind.Look when seen.All(o => o.Id != action.Observation) => Look(action.Observation!),
            _ => 0,
        };
    }

    private bool MayReheat => outlook.Of.Next >= 0
        && posterior.Problem.View.Rounds < practical.Procedure.OfType<RepeatEvent>().Max(r => r.Most);

    private static double[] Reread(Atom atom)
    {
        double differs = atom.Disturbance is Disturbance.Slip or Disturbance.Unreadable ? FindsSlip : 0.01;
        return [differs, 1 - differs];
    }

    /// <summary>The mass of the part itself: none where it was missing all along, the missing mass where it was missing once,
    /// any in its range otherwise.</summary>
    private double[] WithoutPart(Atom atom, string partId)
    {
        MassRange range = practical.Parts.First(p => p.Id == partId).Mass;
        double match = 0.1 / Math.Max(0.2, range.High - range.Low);
        return atom.Disturbance switch
        {
            Disturbance.PartOff { Rows.Count: > 1 } => [0.99, 0.005, 0.005],
            Disturbance.PartOff => [0.005, 0.99, 0.005],
            _ => [0.005, match, 0.995 - match],
        };
    }

    private double Look(string observation)
    {
        Observation looked = practical.Observations.First(o => o.Id == observation);
        return InformationGain.OfFew(outlook, a =>
        {
            double seenShare = ObservationRule.Seen(practical, looked, a.Counting);
            return [seenShare, 1 - seenShare];
        });
    }
}
