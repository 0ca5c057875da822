namespace Calx.Chemistry.Formulas;

/// <summary>How large a formula may be. Text from anyone is read, so each size has an end.</summary>
public static class FormulaLimits
{
    /// <summary>Most characters; the formula of a protein has some 30, the longest names of salts some 60.</summary>
    public const int Characters = 256;

    /// <summary>Most brackets inside each other; real complexes need three.</summary>
    public const int Depth = 8;

    /// <summary>Most digits of one number; a polymer with 999,999 units is far beyond a school's.</summary>
    public const int CountDigits = 6;

    /// <summary>Most atoms of one element, so that balancing has room in 64 bits.</summary>
    public const long Atoms = 1_000_000_000;

    /// <summary>Largest charge, positive or negative; known ions stay below 20.</summary>
    public const int Charge = 99;
}
