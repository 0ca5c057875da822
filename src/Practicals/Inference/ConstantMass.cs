using Calx.Practicals.Texts;

namespace Calx.Practicals.Inference;

/// <summary>What the last two weighings of a repeated reading show.</summary>
public enum ConstantMassVerdict
{
    /// <summary>No weighing after heating: nothing to judge.</summary>
    NotWeighed,

    /// <summary>One weighing: nothing to compare with.</summary>
    OneWeighing,

    /// <summary>The same within the practical's tolerance.</summary>
    Same,

    /// <summary>The mass is still rising.</summary>
    Rising,

    /// <summary>The mass is still falling.</summary>
    Falling,

    /// <summary>The balance is too coarse to tell: its tolerance is more than half of the whole change.</summary>
    CannotTell,
}

/// <summary>Constant mass for one group: the verdict, and the most that can still be unreacted
/// (docs/methods/constant-mass.md).</summary>
public sealed class ConstantMass
{
    private readonly ConstantMassTexts texts;

    internal ConstantMass(
        ConstantMassVerdict verdict, double? lastChangeInGrams, double? unreactedAtMost, string reason, bool reacts, ConstantMassTexts texts)
    {
        Verdict = verdict;
        LastChangeInGrams = lastChangeInGrams;
        UnreactedAtMost = unreactedAtMost;
        Reason = reason;
        (Reacts, this.texts) = (reacts, texts);
    }

    /// <summary>Whether a heating makes a reaction go on; otherwise it only dries.</summary>
    internal bool Reacts { get; }

    /// <summary>What the last change shows.</summary>
    public ConstantMassVerdict Verdict { get; }

    /// <summary>The verdict's word in data: <c>same</c>, <c>rising</c>, <c>falling</c>, <c>cannot-tell</c>, <c>one-weighing</c>;
    /// null where there is no weighing after heating.</summary>
    public string? Word => Verdict switch
    {
        ConstantMassVerdict.NotWeighed => null,
        ConstantMassVerdict.Same => "same",
        ConstantMassVerdict.Rising => "rising",
        ConstantMassVerdict.Falling => "falling",
        ConstantMassVerdict.CannotTell => "cannot-tell",
        _ => "one-weighing",
    };

    /// <summary>The verdict in a few words, for a table.</summary>
    public string Words => Verdict switch
    {
        ConstantMassVerdict.NotWeighed => texts.NotWeighed,
        ConstantMassVerdict.Same => texts.Same,
        ConstantMassVerdict.Rising => texts.Rising,
        ConstantMassVerdict.Falling => texts.Falling,
        ConstantMassVerdict.CannotTell => texts.CannotTell,
        _ => texts.OneWeighing,
    };

    /// <summary>Verdict and bound in a few words, for a table.</summary>
    public string Brief => UnreactedAtMost is double most
        ? Reacts ? texts.WithBound(Words, Percent(most)) : texts.WithUndried(Words, Percent(most))
        : Words;

    /// <summary>A share as a percentage: whole, but with a decimal where it would read as none.</summary>
    internal static string Percent(double share) => (100 * share).InFigures(share < 0.005 ? "F1" : "F0");

    /// <summary>Last weighing less the one before, in g; null where there is one weighing or none.</summary>
    public double? LastChangeInGrams { get; }

    /// <summary>Fraction of the limiting material, 0 to 1: with probability 95 % no more than this is still unreacted, if
    /// nothing was lost and a reheat converts at least the practical's share of what is left. Null where no bound can
    /// be given: <see cref="Reason"/> says why.</summary>
    public double? UnreactedAtMost { get; }

    /// <summary>The verdict in a sentence for the teacher, with the bound and what it assumes, or why there is none.</summary>
    public string Reason { get; }
}
