namespace Calx.Chemistry.Amounts;

/// <summary>
/// What is thought of formulas before anything is weighed. All of it is judgement, declared here and open to change.
/// </summary>
public sealed class FormulaPrior
{
    /// <summary>Greatest number of atoms of one element that is considered unless another is given.</summary>
    public const int UsualLargestNumber = 6;

    /// <summary>How strongly small numbers are preferred unless another strength is given.</summary>
    public const double UsualSimplicity = 1.5;

    /// <summary>Probability of 'none of these' unless another is given.</summary>
    public const double UsualNoneOfThese = 0.05;

    /// <summary>States the prior.</summary>
    /// <param name="largestNumber">Greatest number of atoms of one element, 1 to 50.</param>
    /// <param name="simplicity">A formula's weight is the product of its numbers to the power minus this: 0 makes all
    /// formulas equal; at 1.5 a formula with 2 of one element weighs 0.35 of one with 1.</param>
    /// <param name="noneOfThese">Probability, 0 to below 1, that the masses belong to no formula considered: a mixture,
    /// an unfinished reaction, a loss. Then any composition is equally likely.</param>
    /// <exception cref="ArgumentOutOfRangeException">An argument is out of its range.</exception>
    public FormulaPrior(
        int largestNumber = UsualLargestNumber,
        double simplicity = UsualSimplicity,
        double noneOfThese = UsualNoneOfThese)
    {
        ArgumentOutOfRangeException.ThrowIfLessThan(largestNumber, 1);
        ArgumentOutOfRangeException.ThrowIfGreaterThan(largestNumber, 50);
        if (!(simplicity >= 0 && simplicity <= 10) || !(noneOfThese >= 0 && noneOfThese < 1))
        {
            throw new ArgumentOutOfRangeException(
                nameof(simplicity), "Simplicity is 0 to 10 and the probability of 'none of these' 0 to below 1.");
        }

        LargestNumber = largestNumber;
        Simplicity = simplicity;
        NoneOfThese = noneOfThese;
    }

    /// <summary>Greatest number of atoms of one element.</summary>
    public int LargestNumber { get; }

    /// <summary>The power by which small numbers are preferred.</summary>
    public double Simplicity { get; }

    /// <summary>Prior probability that no formula considered is the right one.</summary>
    public double NoneOfThese { get; }

    /// <summary>Logarithm of a formula's weight, not yet normalised.</summary>
    internal double LogWeight(IReadOnlyList<int> numbers) => -Simplicity * numbers.Sum(number => Math.Log(number));
}
