using Calx.Practicals.Texts;

namespace Calx.Practicals.Marking.Ideas;

/// <summary>The ideas that are looked for. docs/guide/marking.md lists them for teachers.</summary>
public static class KnownIdeas
{
    /// <summary>A difference the other way round.</summary>
    public static Idea SubtractedBackwards { get; } = British("subtracted-backwards", 0.05);

    /// <summary>A quotient upside down.</summary>
    public static Idea Inverted { get; } = British("inverted", 0.08);

    /// <summary>A weighing of vessel and contents taken for the contents.</summary>
    public static Idea VesselNotSubtracted { get; } = British("vessel-not-subtracted", 0.07);

    /// <summary>A factor or term is missing.</summary>
    public static Idea LeftOut { get; } = British("left-out", 0.04);

    /// <summary>Another of the masses.</summary>
    public static Idea WrongMass { get; } = British("wrong-mass", 0.08);

    /// <summary>A share of something else.</summary>
    public static Idea WrongDenominator { get; } = British("wrong-denominator", 0.06);

    /// <summary>Masses compared as if they were amounts.</summary>
    public static Idea MolesSkipped { get; } = British("moles-skipped", 0.10);

    /// <summary>One molar mass for everything.</summary>
    public static Idea OneMolarMass { get; } = British("one-molar-mass", 0.03);

    /// <summary>Atomic numbers in place of atomic masses.</summary>
    public static Idea AtomicNumber { get; } = British("atomic-number", 0.05);

    /// <summary>The mass of a molecule where atoms are counted.</summary>
    public static Idea MoleculeForAtom { get; } = British("molecule-for-atom", 0.06);

    /// <summary>The mass of an atom where molecules are counted.</summary>
    public static Idea AtomForMolecule { get; } = British("atom-for-molecule", 0.03);

    /// <summary>Two molar masses exchanged.</summary>
    public static Idea MolarMassesSwapped { get; } = British("molar-masses-swapped", 0.04);

    /// <summary>Another molar mass of the practical, or one added up wrongly.</summary>
    public static Idea WrongMolarMass { get; } = British("wrong-molar-mass", 0.06);

    /// <summary>The dot of a hydrate read as a multiplication sign.</summary>
    public static Idea DotAsTimes { get; } = British("dot-as-times", 0.02);

    /// <summary>A molar mass divided by a mass.</summary>
    public static Idea MolarMassOverMass { get; } = British("molar-mass-over-mass", 0.05);

    /// <summary>A product for a quotient.</summary>
    public static Idea MultipliedForDivided { get; } = British("multiplied-for-divided", 0.05);

    /// <summary>A quotient for a product.</summary>
    public static Idea DividedForMultiplied { get; } = British("divided-for-multiplied", 0.03);

    /// <summary>Twice or half of what the equation says.</summary>
    public static Idea CoefficientMisplaced { get; } = British("coefficient-misplaced", 0.07);

    /// <summary>The equation's number was not used.</summary>
    public static Idea CoefficientIgnored { get; } = British("coefficient-ignored", 0.05);

    /// <summary>Another charge of the ion: three for two, or two for three.</summary>
    public static Idea OtherCharge { get; } = British("other-charge", 0.02);

    /// <summary>The smaller mass, not the smaller amount, was taken as limiting, or none.</summary>
    public static Idea LimitingIgnored { get; } = British("limiting-ignored", 0.05);

    /// <summary>The decimal point is elsewhere.</summary>
    public static Idea PowerOfTen { get; } = British("power-of-ten", 0.05);

    /// <summary>Milligrams for grams, seconds for minutes and the like.</summary>
    public static Idea UnitSlip { get; } = British("unit-slip", 0.03);

    /// <summary>A difference of temperatures turned into kelvin by adding 273.</summary>
    public static Idea KelvinAdded { get; } = British("kelvin-added", 0.02);

    /// <summary>The sign that says which way heat goes was left out.</summary>
    public static Idea SignLost { get; } = British("sign-lost", 0.05);

    /// <summary>The molar volume of a gas where nothing is a gas.</summary>
    public static Idea GasVolume { get; } = British("gas-volume", 0.02);

    /// <summary>An intermediate value rounded so far that it changed the answer.</summary>
    public static Idea RoundedEarly { get; } = British("rounded-early", 0.08);

    /// <summary>Rounded to a whole number.</summary>
    public static Idea RoundedToWhole { get; } = British("rounded-to-whole", 0.05);

    /// <summary>A digit was miscopied.</summary>
    public static Idea CopiedDigit { get; } = British("copied-digit", 0.05);

    /// <summary>An earlier weighing in place of the last.</summary>
    public static Idea EarlierWeighing { get; } = British("earlier-weighing", 0.04);

    /// <summary>Another group's readings.</summary>
    public static Idea OtherGroup { get; } = British("other-group", 0.03);

    /// <summary>A decimal ratio turned into large whole numbers.</summary>
    public static Idea RatioOverRead { get; } = British("ratio-over-read", 0.10);

    /// <summary>The textbook's formula against the own ratio.</summary>
    public static Idea ForcedToAccepted { get; } = British("forced-to-accepted", 0.15);

    /// <summary>Whole numbers that can still be divided.</summary>
    public static Idea NotSimplest { get; } = British("not-simplest", 0.05);

    /// <summary>Constant mass seen where it is not, or not seen where it is.</summary>
    public static Idea ConstantMassMisjudged { get; } = British("constant-mass-misjudged", 0.10);

    /// <summary>One weighing taken for constant mass.</summary>
    public static Idea OneWeighingEnough { get; } = British("one-weighing-enough", 0.10);

    /// <summary>A cause that works the other way.</summary>
    public static Idea OtherSign { get; } = British("other-sign", 0.15);

    /// <summary>'Human error' and the like.</summary>
    public static Idea Blame { get; } = British("blame", 0.10);

    /// <summary>No cause where there must be one.</summary>
    public static Idea NoCauseSeen { get; } = British("no-cause-seen", 0.08);

    /// <summary>A remedy for another cause.</summary>
    public static Idea OtherCausesRemedy { get; } = British("other-causes-remedy", 0.12);

    /// <summary>Ordinary scatter taken for an odd result, or an odd result for scatter.</summary>
    public static Idea ScatterTakenForOdd { get; } = British("scatter-taken-for-odd", 0.10);

    /// <summary>Ids of those that lie behind judgements alone.</summary>
    internal static IReadOnlySet<string> OfJudgements { get; } = new HashSet<string>(StringComparer.Ordinal)
    {
        "ratio-over-read", "forced-to-accepted", "not-simplest", "constant-mass-misjudged", "one-weighing-enough", "other-sign", "blame", "no-cause-seen", "other-causes-remedy",
        "scatter-taken-for-odd",
    };

    /// <summary>All of them.</summary>
    public static IReadOnlyList<Idea> All { get; } =
    [
        SubtractedBackwards, Inverted, VesselNotSubtracted, LeftOut, WrongMass, WrongDenominator, MolesSkipped, OneMolarMass, AtomicNumber,
        MoleculeForAtom, AtomForMolecule, MolarMassesSwapped, WrongMolarMass, DotAsTimes, MolarMassOverMass, MultipliedForDivided,
        DividedForMultiplied, CoefficientMisplaced, CoefficientIgnored, OtherCharge, LimitingIgnored, PowerOfTen, UnitSlip,
        KelvinAdded, SignLost, GasVolume, RoundedEarly, RoundedToWhole, CopiedDigit, EarlierWeighing, OtherGroup,
        RatioOverRead, ForcedToAccepted, NotSimplest, ConstantMassMisjudged, OneWeighingEnough, OtherSign, Blame, NoCauseSeen, OtherCausesRemedy, ScatterTakenForOdd,
    ];

    /// <summary>What was done, as a clause.</summary>
    /// <param name="idea">One of them.</param>
    /// <param name="language">In which language.</param>
    public static string LabelOf(Idea idea, EngineLanguage language)
    {
        ArgumentNullException.ThrowIfNull(idea);
        return Words(idea.Id, new IdeaTexts(language)).Label;
    }

    /// <summary>Marking itself speaks British: an idea's own words are those.</summary>
    private static Idea British(string id, double rate)
    {
        (string label, string mend) = Words(id, new IdeaTexts(EngineLanguage.British));
        return new Idea(id, label, mend, rate);
    }

    private static (string Label, string Mend) Words(string id, IdeaTexts texts) => id switch
    {
        "subtracted-backwards" => (texts.SubtractedBackwards, texts.SubtractedBackwardsMend),
        "inverted" => (texts.Inverted, texts.InvertedMend),
        "vessel-not-subtracted" => (texts.VesselNotSubtracted, texts.VesselNotSubtractedMend),
        "left-out" => (texts.LeftOut, texts.LeftOutMend),
        "wrong-mass" => (texts.WrongMass, texts.WrongMassMend),
        "wrong-denominator" => (texts.WrongDenominator, texts.WrongDenominatorMend),
        "moles-skipped" => (texts.MolesSkipped, texts.MolesSkippedMend),
        "one-molar-mass" => (texts.OneMolarMass, texts.OneMolarMassMend),
        "atomic-number" => (texts.AtomicNumber, texts.AtomicNumberMend),
        "molecule-for-atom" => (texts.MoleculeForAtom, texts.MoleculeForAtomMend),
        "atom-for-molecule" => (texts.AtomForMolecule, texts.AtomForMoleculeMend),
        "molar-masses-swapped" => (texts.MolarMassesSwapped, texts.MolarMassesSwappedMend),
        "wrong-molar-mass" => (texts.WrongMolarMass, texts.WrongMolarMassMend),
        "dot-as-times" => (texts.DotAsTimes, texts.DotAsTimesMend),
        "molar-mass-over-mass" => (texts.MolarMassOverMass, texts.MolarMassOverMassMend),
        "multiplied-for-divided" => (texts.MultipliedForDivided, texts.MultipliedForDividedMend),
        "divided-for-multiplied" => (texts.DividedForMultiplied, texts.DividedForMultipliedMend),
        "coefficient-misplaced" => (texts.CoefficientMisplaced, texts.CoefficientMisplacedMend),
        "coefficient-ignored" => (texts.CoefficientIgnored, texts.CoefficientIgnoredMend),
        "other-charge" => (texts.OtherCharge, texts.OtherChargeMend),
        "limiting-ignored" => (texts.LimitingIgnored, texts.LimitingIgnoredMend),
        "power-of-ten" => (texts.PowerOfTen, texts.PowerOfTenMend),
        "unit-slip" => (texts.UnitSlip, texts.UnitSlipMend),
        "kelvin-added" => (texts.KelvinAdded, texts.KelvinAddedMend),
        "sign-lost" => (texts.SignLost, texts.SignLostMend),
        "gas-volume" => (texts.GasVolume, texts.GasVolumeMend),
        "rounded-early" => (texts.RoundedEarly, texts.RoundedEarlyMend),
        "rounded-to-whole" => (texts.RoundedToWhole, texts.RoundedToWholeMend),
        "copied-digit" => (texts.CopiedDigit, texts.CopiedDigitMend),
        "earlier-weighing" => (texts.EarlierWeighing, texts.EarlierWeighingMend),
        "other-group" => (texts.OtherGroup, texts.OtherGroupMend),
        "ratio-over-read" => (texts.RatioOverRead, texts.RatioOverReadMend),
        "forced-to-accepted" => (texts.ForcedToAccepted, texts.ForcedToAcceptedMend),
        "not-simplest" => (texts.NotSimplest, texts.NotSimplestMend),
        "constant-mass-misjudged" => (texts.ConstantMassMisjudged, texts.ConstantMassMisjudgedMend),
        "one-weighing-enough" => (texts.OneWeighingEnough, texts.OneWeighingEnoughMend),
        "other-sign" => (texts.OtherSign, texts.OtherSignMend),
        "blame" => (texts.Blame, texts.BlameMend),
        "no-cause-seen" => (texts.NoCauseSeen, texts.NoCauseSeenMend),
        "other-causes-remedy" => (texts.OtherCausesRemedy, texts.OtherCausesRemedyMend),
        "scatter-taken-for-odd" => (texts.ScatterTakenForOdd, texts.ScatterTakenForOddMend),
        _ => throw new ArgumentException($"There is no idea '{id}'.", nameof(id)),
    };
}
