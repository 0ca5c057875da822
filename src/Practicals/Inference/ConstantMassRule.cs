using Calx.Measurement.Numbers;
using Calx.Practicals.Definition;
using Calx.Practicals.Readings;
using Calx.Practicals.Texts;

namespace Calx.Practicals.Inference;

/// <summary>Judges constant mass for the groups of one class.</summary>
/// <param name="rule">The practical's rule.</param>
/// <param name="divisionInGrams">One division of the balance for the repeated reading.</param>
/// <param name="reacts">Whether a heating makes a reaction go on; otherwise it only dries: <see cref="Practical.RepeatsReaction"/>.</param>
/// <param name="changeOfOneGram">The whole change of mass of 1 g of sample when the reaction is complete, signed.</param>
/// <param name="language">The language of its words.</param>
internal sealed class ConstantMassRule(ConstantMassDefinition rule, bool reacts, double divisionInGrams, double changeOfOneGram, EngineLanguage language)
{
    private const double Coverage = 0.95;

    private readonly ConstantMassTexts texts = new(language);

    private decimal Allowed => Tolerance(rule, divisionInGrams);

    /// <summary>Greatest difference that still counts as none, in g. A decimal: 0.02 is exactly two divisions of 0.01, which binary fractions would miss.</summary>
    public static decimal Tolerance(ConstantMassDefinition rule, double divisionInGrams) => (decimal)rule.ToleranceInDivisions * (decimal)divisionInGrams;

    /// <summary>What the last change shows.</summary>
    /// <param name="change">Last weighing less the one before, in g.</param>
    /// <param name="tolerance">Greatest difference that still counts as none, in g.</param>
    /// <param name="wholeChange">The whole change that is due, in g, or null where the readings do not give the sample.</param>
    public static ConstantMassVerdict Verdict(decimal change, decimal tolerance, double? wholeChange) =>
        wholeChange is double whole && (double)tolerance > whole / 2 ? ConstantMassVerdict.CannotTell
            : Math.Abs(change) <= tolerance ? ConstantMassVerdict.Same
            : change > 0 ? ConstantMassVerdict.Rising
            : ConstantMassVerdict.Falling;

    /// <summary>Judges one group.</summary>
    /// <param name="group">The group's readings.</param>
    /// <param name="sample">The sample's mass in g, or null where the readings do not give it.</param>
    /// <param name="readingUncertaintyInGrams">Standard uncertainty of one weighing.</param>
    public ConstantMass Judge(GroupReadings group, QuantityEstimate? sample, double readingUncertaintyInGrams)
    {
        TakenReading[] weighings = [.. group.RepeatsOf(rule.Reading)];
        double? wholeChange = sample is { Value: > 0 } ? sample.Value * Math.Abs(changeOfOneGram) : null;
        if (weighings.Length < 2)
        {
            return new ConstantMass(
                weighings.Length == 0 ? ConstantMassVerdict.NotWeighed : ConstantMassVerdict.OneWeighing, null, null,
                weighings.Length == 0 ? texts.NoWeighing : texts.OneCannotShow, reacts, texts);
        }

        decimal change = weighings[^1].Value.Value - weighings[^2].Value.Value;
        ConstantMassVerdict verdict = Verdict(change, Allowed, wholeChange);
        bool wentBack = Math.Sign(changeOfOneGram) * Math.Sign(change) < 0 && Math.Abs(change) > Allowed;
        double? unreacted = wholeChange is double whole && !wentBack && rule.LeastConversion is double converted and > 0
            ? Unreacted((double)change, readingUncertaintyInGrams, sample!, whole, converted)
            : null;
        return new ConstantMass(verdict, (double)change, unreacted, Sentences(verdict, change, wentBack, unreacted), reacts, texts);
    }

    private double Unreacted(double change, double readingUncertainty, QuantityEstimate sample, double whole, double converted)
    {
        double leftOverChanged = (1 - converted) / converted;
        double towardsEnd = Math.Sign(changeOfOneGram) * change;
        double fraction = leftOverChanged * towardsEnd / whole;
        double fromWeighings = leftOverChanged * Math.Sqrt(2) * readingUncertainty / whole;
        double fromSample = fraction * sample.StandardUncertainty / sample.Value;
        double standard = Math.Sqrt(fromWeighings * fromWeighings + fromSample * fromSample);
        return Math.Min(1, NonNegativeBound.Upper(fraction, standard, Coverage));
    }

    private string Sentences(ConstantMassVerdict verdict, decimal change, bool wentBack, double? unreacted)
    {
        (string divisions, string grams) = (rule.ToleranceInDivisions.InFigures("0.#"), Allowed.InFigures("0.####"));
        string first = verdict switch
        {
            ConstantMassVerdict.Same => texts.WithinTolerance(Figures.Text((double)change, change.Scale), divisions, grams),
            ConstantMassVerdict.Rising => texts.StillRose(Math.Abs(change).InFigures()),
            ConstantMassVerdict.Falling => texts.StillFell(Math.Abs(change).InFigures()),
            _ => texts.TooCoarse(divisions, grams),
        };
        string second = rule.LeastConversion is not double converted ? texts.NothingReacts
            : unreacted is double most ? AtMost(ConstantMass.Percent(most), (100 * converted).InFigures("F0"))
            : wentBack ? texts.WentBack
            : converted > 0 ? texts.WithoutSample : texts.OutOfReach;
        return $"{first} {second}";
    }

    private string AtMost(string most, string conversion) =>
        reacts ? texts.UnreactedAtMost(most, conversion) : texts.UndriedAtMost(most, conversion);
}
