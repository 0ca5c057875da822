using Calx.Measurement.Numbers;
using Calx.Practicals.Definition;
using Calx.Practicals.Inference.Posterior;
using Calx.Practicals.Readings;
using Calx.Practicals.Texts;

namespace Calx.Practicals.Inference.Deciding;

/// <summary>
/// What a group at the balance is to do now: the minutes that one more step costs against what a spoiled answer is worth, each
/// weighed with its probability. The trade's rule stands beside it (docs/methods/decision.md).
/// </summary>
internal sealed class DecisionRule(Outlook outlook, ConstantMass? rule, IReadOnlyList<Observation> seen)
{
    /// <summary>A slip or a missing part as probable as this is looked into before anything is decided from it.</summary>
    private const double LooksWrong = 0.5;

    /// <summary>From here on nothing but a slip is left to explain a reading: it cannot be (judgement).</summary>
    private const double CannotBe = 0.999;

    /// <summary>Warmth less probable than this sends nobody back to wait, whatever it would cost (judgement).</summary>
    private const double LooksWarm = 0.25;

    private readonly Practical practical = outlook.Posterior.Hidden.Circumstances.Practical;
    private readonly CausePosterior posterior = outlook.Posterior;
    private readonly DecisionTexts texts = new(outlook.Posterior.Language);
    private readonly Wording wording = new(outlook.Posterior.Language);

    /// <summary>Decides.</summary>
    public Decision Decide()
    {
        if (seen.FirstOrDefault(o => o.Stop) is Observation stop)
        {
            return new Decision.Taken(Verdict.StopTellYourTeacher, Spoiled(), rule, texts.Noted(stop.Label));
        }

        if (practical.Findings.Decision is not DecisionDefinition worth || outlook.Of.Next < 0)
        {
            return new Decision.NotYet(texts.NothingHeated);
        }

        int last = outlook.Of.LastRepeated();
        if (last < 0 || posterior.Problem.Rows.All(r => !r.IsReading || r.Weighings[0].Weighing != last))
        {
            return new Decision.NotYet(texts.NotWeighedYet);
        }

        double spoiled = Spoiled();
        if (TooCoarse() is string coarse)
        {
            return new Decision.Taken(Verdict.CannotTell, spoiled, rule, coarse);
        }

        return Doubtful(spoiled) ?? Weigh(worth, spoiled);
    }

    /// <summary>Whether one more heating gains more minutes than it costs, whoever may or may not do it.</summary>
    public static bool IsReheatWorthIt(Practical practical, double probabilitySpoiled) => practical.Findings.Decision is DecisionDefinition worth
        && GainOfReheat(practical, worth, probabilitySpoiled) > 0;

    private static double GainOfReheat(Practical practical, DecisionDefinition worth, double probabilitySpoiled) =>
        (probabilitySpoiled * worth.WorthMinutes) - Minutes(practical, ActionKind.Reheat);

    private double Spoiled()
    {
        if (practical.Findings.Decision is not DecisionDefinition worth || outlook.Of.Next < 0)
        {
            return 0;
        }

        return outlook.Share(a => outlook.Of.StillToMove(a) > worth.Matters);
    }

    /// <summary>Two divisions of the balance are more than half of the whole change.</summary>
    private string? TooCoarse()
    {
        double sample = outlook.Atoms.Sum(a => a.Weight * posterior.Problem.View.SampleOf(a.Point, a.Estimates.AsSpan(posterior.Problem.Unknowns.Parts))) / outlook.Sum;
        double change = Math.Abs(posterior.Hidden.Rule.WholeChangeOfOneGram * sample);
        double division = posterior.Problem.DivisionInGrams;
        return 2 * division > change / 2 ? texts.TooCoarse(Figures.Text(change, 3), (2 * division).InFigures()) : null;
    }

    private Decision.Taken? Doubtful(double spoiled)
    {
        CauseProbability? wrong = posterior.Causes.Where(c => EffectOf(c.Cause) is FaultEffect.Pen or FaultEffect.Off)
            .FirstOrDefault(c => c.Present >= LooksWrong && c.Reading is not null);
        if (wrong is null)
        {
            return null;
        }

        string name = ReadingNames.OfId(practical, wrong.Reading!);
        string why = wrong.ProbableDigits is string shown ? texts.LookAgainDigits(name, shown) : texts.LookAgain(name);
        return new Decision.Taken(Verdict.CheckReading, spoiled, rule, why, wrong.Reading, wrong.ProbableDigits)
        {
            CannotBe = wrong.Present >= CannotBe && EffectOf(wrong.Cause) is FaultEffect.Pen,
        };
    }

    private Decision.Taken Weigh(DecisionDefinition worth, double spoiled)
    {
        double warm = outlook.Share(a => outlook.Of.MovedByWarmth(a) > worth.Matters);
        double reheat = Minutes(practical, ActionKind.Reheat);
        double reweigh = Minutes(practical, ActionKind.Reweigh);
        bool may = posterior.Problem.View.Rounds < practical.Procedure.OfType<RepeatEvent>().Max(r => r.Most);
        double gainOfReheat = GainOfReheat(practical, worth, spoiled);
        double gainOfReweigh = warm >= LooksWarm ? (warm * worth.WorthMinutes) - reweigh : double.NegativeInfinity;
        if (gainOfReweigh > 0 && gainOfReweigh > gainOfReheat)
        {
            return new Decision.Taken(Verdict.CoolAndReweigh, spoiled, rule, Said(
                texts.StillWarm(wording.Percent(warm), reweigh.InFigures("0.#")), Beside(Verdict.CoolAndReweigh)));
        }

        string matters = worth.Matters.InFigures();
        if (gainOfReheat > 0 && may)
        {
            return new Decision.Taken(Verdict.Reheat, spoiled, rule, Said(
                texts.WouldMove(wording.Percent(spoiled), Key.Label, matters, reheat.InFigures("0.#")), Beside(Verdict.Reheat)));
        }

        return new Decision.Taken(Verdict.ConstantMass, spoiled, rule, Said(
            texts.WouldNotMove(wording.Percent(1 - spoiled), Key.Label, matters),
            gainOfReheat > 0 ? texts.NoFurtherHeating : null,
            Beside(Verdict.ConstantMass)));
    }

    private static string Said(params IEnumerable<string?> sentences) => string.Join(' ', sentences.OfType<string>());

    /// <summary>Where the trade's rule says something else, why.</summary>
    private string? Beside(Verdict verdict) => (verdict, rule?.Verdict) switch
    {
        (Verdict.Reheat, ConstantMassVerdict.Same) => texts.SameButReheat,
        (Verdict.ConstantMass, ConstantMassVerdict.Rising or ConstantMassVerdict.Falling) => texts.MovedButStop,
        (Verdict.ConstantMass, ConstantMassVerdict.OneWeighing) => texts.OnceButStop,
        (Verdict.CoolAndReweigh, ConstantMassVerdict.Same) => texts.SameButWarm,
        _ => null,
    };

    private QuantityDefinition Key => practical.Quantities.First(q => q.Id == practical.Findings.Key);

    private FaultEffect? EffectOf(string cause) => practical.Faults.FirstOrDefault(f => f.Cause == cause)?.Effect;

    private static double Minutes(Practical practical, ActionKind kind) =>
        practical.Actions.FirstOrDefault(a => a.Kind == kind)?.Minutes
        ?? practical.Steps.Where(s => s.Place.Round is StepRound.Again or StepRound.Each).Sum(s => s.Minutes.Likely);
}
