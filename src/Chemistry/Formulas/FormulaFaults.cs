namespace Calx.Chemistry.Formulas;

/// <summary>What is said of a formula that cannot be read, in one place.</summary>
internal static class FormulaFaults
{
    public const string Empty = "a formula is missing here";
    public const string ElectronMass = "the electron has no atomic weight: its mass is left out of molar masses";
    public const string SmallLetter = "an element's symbol begins with a capital letter";
    public const string Coefficient = "a number before a formula is a coefficient and belongs to an equation";
    public const string Isotope = "isotopes are read only for hydrogen, written D or T";
    public const string NothingToClose = "this bracket was not opened";
    public const string EmptyBrackets = "nothing stands between these brackets";
    public const string DotInBrackets = "a dot before water of crystallisation cannot stand inside brackets";
    public const string NothingAfterDot = "after the dot a formula must follow, as in CuSO4·5H2O";
    public const string UnknownWater = "the amount of water must be a number, as in CuSO4·5H2O";
    public const string ZeroCount = "a number of atoms does not begin with 0";
    public const string WholeCounts =
        "numbers of atoms are whole here; a substance of variable composition such as Fe0.95O has no exact formula";

    public const string WholeWater = "the amount of water is a whole number here; multiply the whole formula";
    public const string TwoReadings = "this can be read in two ways; write the charge behind ^";
    public const string ChargeSign = "a charge needs its sign, as in Fe^3+ or SO4^2-";
    public const string SignFirst = "a charge is written with the number first, behind ^";
    public const string ZeroCharge = "a charge begins with 1 to 9, or is the sign alone";
    public const string BareElectron = "e is the electron only with its charge, e-";
    public const string ChargeThenState = "the charge stands before the state, as in Na^+(aq)";
    public const string InnerSpace = "a formula is written without spaces";
    public const string SignsDiffer = "a charge is either positive or negative";

    public static readonly string TooLong =
        $"a formula has at most {FormulaLimits.Characters} characters";

    public static readonly string TooDeep =
        $"brackets stand at most {FormulaLimits.Depth} deep in each other";

    public static readonly string TooManyDigits =
        $"a number in a formula has at most {FormulaLimits.CountDigits} digits";

    public static readonly string TooManyAtoms = "there are more than a thousand million atoms of one element";

    public static readonly string TooMuchCharge = $"a charge is at most {FormulaLimits.Charge}";

    public static string NoElement(ReadOnlySpan<char> symbol) => $"there is no element {symbol}";

    public static string NotClosed(char open) => $"this {open} is not closed by {FormulaCharacters.Closing(open)}";

    public static string WrongBracket(char open, char close)
        => $"{close} cannot close {open}: {FormulaCharacters.Closing(open)} was expected";

    public static string Unexpected(char c) => char.IsControl(c) || char.IsSurrogate(c)
        ? $"the character U+{(int)c:X4} has no place in a formula"
        : $"{c} has no place here in a formula";
}
