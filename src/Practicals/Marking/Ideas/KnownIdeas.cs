namespace Calx.Practicals.Marking.Ideas;

/// <summary>The ideas that are looked for. docs/guide/marking.md lists them for teachers.</summary>
public static class KnownIdeas
{
    /// <summary>A difference the other way round.</summary>
    public static Idea SubtractedBackwards { get; } = new(
        "subtracted-backwards", "the subtraction is the wrong way round", "Which of the two weighings has more on the pan?", 0.05);

    /// <summary>A quotient upside down.</summary>
    public static Idea Inverted { get; } = new(
        "inverted", "the quotient is upside down", "Say in words which amount comes first: so much of this for each of that.", 0.08);

    /// <summary>A weighing of vessel and contents taken for the contents.</summary>
    public static Idea VesselNotSubtracted { get; } = new(
        "vessel-not-subtracted", "the mass of the vessel was not taken away", "What stood on the pan at that weighing?", 0.07);

    /// <summary>A factor or term is missing.</summary>
    public static Idea LeftOut { get; } = new(
        "left-out", "a step of the working was left out", "Write the whole working down, then put the numbers in.", 0.04);

    /// <summary>Another of the masses.</summary>
    public static Idea WrongMass { get; } = new(
        "wrong-mass", "the mass of something else was used", "Which substance is it that the question asks about?", 0.08);

    /// <summary>A share of something else.</summary>
    public static Idea WrongDenominator { get; } = new(
        "wrong-denominator", "it is a share of the wrong whole", "Per cent of what? Name the whole first.", 0.06);

    /// <summary>Masses compared as if they were amounts.</summary>
    public static Idea MolesSkipped { get; } = new(
        "moles-skipped", "masses were compared instead of moles", "Do equal masses of two elements hold equally many atoms?", 0.10);

    /// <summary>One molar mass for everything.</summary>
    public static Idea OneMolarMass { get; } = new(
        "one-molar-mass", "the same molar mass was used for both substances", "Whose particles are counted in each step?", 0.03);

    /// <summary>Atomic numbers in place of atomic masses.</summary>
    public static Idea AtomicNumber { get; } = new(
        "atomic-number", "the atomic number was used for the relative atomic mass", "Which of the two numbers in the periodic table is the mass?", 0.05);

    /// <summary>The mass of a molecule where atoms are counted.</summary>
    public static Idea MoleculeForAtom { get; } = new(
        "molecule-for-atom", "the molar mass of the molecule was used where atoms are counted", "Atoms in the compound, or molecules of the gas: which are counted here?", 0.06);

    /// <summary>The mass of an atom where molecules are counted.</summary>
    public static Idea AtomForMolecule { get; } = new(
        "atom-for-molecule", "the mass of one atom was used for the whole particle", "How many atoms has one particle of it?", 0.03);

    /// <summary>Two molar masses exchanged.</summary>
    public static Idea MolarMassesSwapped { get; } = new(
        "molar-masses-swapped", "the two molar masses were exchanged", "Put the name of the substance beside each number.", 0.04);

    /// <summary>Another molar mass of the practical, or one added up wrongly.</summary>
    public static Idea WrongMolarMass { get; } = new(
        "wrong-molar-mass", "the molar mass of something else was used, or it was added up wrongly", "Add the molar mass up again, atom by atom.", 0.06);

    /// <summary>The dot of a hydrate read as a multiplication sign.</summary>
    public static Idea DotAsTimes { get; } = new(
        "dot-as-times", "the dot in the formula was read as a multiplication", "The dot means 'together with': the water is added.", 0.02);

    /// <summary>A molar mass divided by a mass.</summary>
    public static Idea MolarMassOverMass { get; } = new(
        "molar-mass-over-mass", "the molar mass was divided by the mass", "Is there more than a mole here, or less?", 0.05);

    /// <summary>A product for a quotient.</summary>
    public static Idea MultipliedForDivided { get; } = new(
        "multiplied-for-divided", "it was multiplied where it should be divided", "What unit would your working give?", 0.05);

    /// <summary>A quotient for a product.</summary>
    public static Idea DividedForMultiplied { get; } = new(
        "divided-for-multiplied", "it was divided where it should be multiplied", "What unit would your working give?", 0.03);

    /// <summary>Twice or half of what the equation says.</summary>
    public static Idea CoefficientMisplaced { get; } = new(
        "coefficient-misplaced", "a number of the equation was misused: it is twice or half of what it should be", "For one mole of the first substance, how many moles of the second?", 0.07);

    /// <summary>The equation's number was not used.</summary>
    public static Idea CoefficientIgnored { get; } = new(
        "coefficient-ignored", "the numbers of the equation were not used", "What does the equation say: how many for how many?", 0.05);

    /// <summary>Another charge of the ion: three for two, or two for three.</summary>
    public static Idea OtherCharge { get; } = new(
        "other-charge", "another charge of the ion was taken", "Which ion forms here, and with which charge?", 0.02);

    /// <summary>The smaller mass, not the smaller amount, was taken as limiting, or none.</summary>
    public static Idea LimitingIgnored { get; } = new(
        "limiting-ignored", "it was worked out from the substance that is in excess", "Which of the two is used up first?", 0.05);

    /// <summary>The decimal point is elsewhere.</summary>
    public static Idea PowerOfTen { get; } = new(
        "power-of-ten", "the decimal point is in the wrong place", "Estimate it first: is it nearer to 0.1, 1 or 10?", 0.05);

    /// <summary>Milligrams for grams, seconds for minutes and the like.</summary>
    public static Idea UnitSlip { get; } = new(
        "unit-slip", "a unit was not converted", "Write the unit beside each number.", 0.03);

    /// <summary>A difference of temperatures turned into kelvin by adding 273.</summary>
    public static Idea KelvinAdded { get; } = new(
        "kelvin-added", "273 was added to a difference of temperatures", "A rise of one degree is a rise of one kelvin.", 0.02);

    /// <summary>The molar volume of a gas where nothing is a gas.</summary>
    public static Idea GasVolume { get; } = new(
        "gas-volume", "the molar volume of a gas was used for something that is not a gas", "What state is it in?", 0.02);

    /// <summary>An intermediate value rounded so far that it changed the answer.</summary>
    public static Idea RoundedEarly { get; } = new(
        "rounded-early", "a value on the way was rounded too far", "Keep the digits until the end, then round once.", 0.08);

    /// <summary>Rounded to a whole number.</summary>
    public static Idea RoundedToWhole { get; } = new(
        "rounded-to-whole", "it was rounded to a whole number", "Your readings say more than that: how many figures do they allow?", 0.05);

    /// <summary>A digit was miscopied.</summary>
    public static Idea CopiedDigit { get; } = new(
        "copied-digit", "a digit was miscopied, or two were exchanged", "Compare each number with your table once more.", 0.05);

    /// <summary>An earlier weighing in place of the last.</summary>
    public static Idea EarlierWeighing { get; } = new(
        "earlier-weighing", "an earlier weighing was used instead of the last one", "Which weighing is the one at constant mass?", 0.04);

    /// <summary>Another group's readings.</summary>
    public static Idea OtherGroup { get; } = new(
        "other-group", "it fits the readings of another group", "Use the readings in your own table.", 0.03);

    /// <summary>A decimal ratio turned into large whole numbers.</summary>
    public static Idea RatioOverRead { get; } = new(
        "ratio-over-read", "the decimal ratio was turned into large whole numbers", "How far can your ratio move within its uncertainty, and which simple formulas lie there?", 0.10);

    /// <summary>The textbook's formula against the own ratio.</summary>
    public static Idea ForcedToAccepted { get; } = new(
        "forced-to-accepted", "the accepted formula was written although the own ratio says another", "Write what your own ratio gives, then say why it differs from the book.", 0.15);

    /// <summary>Whole numbers that can still be divided.</summary>
    public static Idea NotSimplest { get; } = new(
        "not-simplest", "the whole numbers can still be divided", "By which number can both be divided?", 0.05);

    /// <summary>Constant mass seen where it is not, or not seen where it is.</summary>
    public static Idea ConstantMassMisjudged { get; } = new(
        "constant-mass-misjudged", "the last two weighings say the other", "By how much do the last two weighings differ, and is that more than two steps of the balance?", 0.10);

    /// <summary>One weighing taken for constant mass.</summary>
    public static Idea OneWeighingEnough { get; } = new(
        "one-weighing-enough", "the weighings cannot tell whether it was complete", "Which two weighings would you compare?", 0.10);

    /// <summary>A cause that works the other way.</summary>
    public static Idea OtherSign { get; } = new(
        "other-sign", "this cause would move the value to the other side", "If that happened, which reading would be larger or smaller, and what would it do to the value?", 0.15);

    /// <summary>'Human error' and the like.</summary>
    public static Idea Blame { get; } = new(
        "blame", "blame is not a cause", "What exactly happened to the substance, the vessel or the balance?", 0.10);

    /// <summary>No cause where there must be one.</summary>
    public static Idea NoCauseSeen { get; } = new(
        "no-cause-seen", "the value lies further away than the balance explains", "Compare your value with the accepted one: is the difference more than your weighings explain?", 0.08);

    /// <summary>A remedy for another cause.</summary>
    public static Idea OtherCausesRemedy { get; } = new(
        "other-causes-remedy", "this change does not work against the cause that was named", "Read your cause again: what would have kept that from happening?", 0.12);

    /// <summary>Ordinary scatter taken for an odd result, or an odd result for scatter.</summary>
    public static Idea ScatterTakenForOdd { get; } = new(
        "scatter-taken-for-odd", "another group's result lies further from the rest", "Put all results on one line: which stands apart, and how wide do the others spread?", 0.10);

    /// <summary>All of them.</summary>
    public static IReadOnlyList<Idea> All { get; } =
    [
        SubtractedBackwards, Inverted, VesselNotSubtracted, LeftOut, WrongMass, WrongDenominator, MolesSkipped, OneMolarMass, AtomicNumber,
        MoleculeForAtom, AtomForMolecule, MolarMassesSwapped, WrongMolarMass, DotAsTimes, MolarMassOverMass, MultipliedForDivided,
        DividedForMultiplied, CoefficientMisplaced, CoefficientIgnored, OtherCharge, LimitingIgnored, PowerOfTen, UnitSlip,
        KelvinAdded, GasVolume, RoundedEarly, RoundedToWhole, CopiedDigit, EarlierWeighing, OtherGroup,
        RatioOverRead, ForcedToAccepted, NotSimplest, ConstantMassMisjudged, OneWeighingEnough, OtherSign, Blame, NoCauseSeen, OtherCausesRemedy, ScatterTakenForOdd,
    ];
}
