namespace Calx.Chemistry.Equations;

/// <summary>How large an equation may be. Text from anyone is read, so each size has an end.</summary>
public static class EquationLimits
{
    /// <summary>Most characters; the longest curiosities of the textbooks have some 400.</summary>
    public const int Characters = 2000;

    /// <summary>Most species on both sides together; the largest known puzzles have below 30.</summary>
    public const int Species = 40;

    /// <summary>Most different elements.</summary>
    public const int Elements = 40;

    /// <summary>Most digits of a coefficient, so that atoms on a side are counted in 64 bits.</summary>
    public const int CoefficientDigits = 8;

    /// <summary>Most elementary balancings that are searched for; beyond it the answer is
    /// <see cref="BalancingResult.Undecided"/>.</summary>
    public const int ElementaryBalancings = 512;
}
