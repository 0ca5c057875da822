using System.Globalization;

namespace Calx.Chemistry.Amounts;

/// <summary>The empirical formula of a compound from the masses of its elements.</summary>
public static class EmpiricalFormula
{
    /// <summary>Most formulas weighed against each other; six elements up to ten atoms each.</summary>
    public const int MostFormulas = 1_000_000;

    /// <summary>Most elements of one compound.</summary>
    public const int MostElements = 6;

    /// <summary>
    /// Every formula with whole numbers up to the limit, ranked by its probability given the masses: not the nearest
    /// ratio, but all that these masses allow.
    /// </summary>
    /// <param name="elements">Two to six elements in the order of the formula, each with its mass.</param>
    /// <param name="prior">What is thought beforehand; the usual judgement where null.</param>
    public static FormulaRanking Candidates(IReadOnlyList<WeighedPart> elements, FormulaPrior? prior = null)
    {
        ArgumentNullException.ThrowIfNull(elements);
        prior ??= new FormulaPrior();
        if (Fault(elements, prior) is { } reason)
        {
            return new FormulaRanking.Undetermined(reason);
        }

        WholeNumberPosterior.Entry[] entries = [.. Compositions(elements.Count, prior.LargestNumber)
            .Select(numbers => new WholeNumberPosterior.Entry(Text(elements, numbers), numbers, prior.LogWeight(numbers)))];
        return WholeNumberPosterior.Rank(new MeasuredAmounts(elements), entries, prior.NoneOfThese);
    }

    private static string? Fault(IReadOnlyList<WeighedPart> elements, FormulaPrior prior)
    {
        if (elements.Count is < 2 or > MostElements)
        {
            return string.Create(CultureInfo.InvariantCulture, $"a formula is sought of two to {MostElements} elements");
        }

        if (elements.GroupBy(element => element.Symbol).FirstOrDefault(group => group.Count() > 1) is { } twice)
        {
            return $"{twice.Key} is given more than once";
        }

        return Math.Pow(prior.LargestNumber, elements.Count) > MostFormulas
            ? "more than a million formulas would have to be compared; allow fewer atoms of one element"
            : elements.Select(PartMass.Fault).FirstOrDefault(fault => fault is not null);
    }

    /// <summary>All lists of numbers from 1 to the limit without a common divisor, simplest first element first.</summary>
    private static IEnumerable<int[]> Compositions(int parts, int largest)
    {
        int[] numbers = new int[parts];
        Array.Fill(numbers, 1);
        do
        {
            if (numbers.Aggregate(GreatestCommonDivisor) == 1)
            {
                yield return [.. numbers];
            }
        }
        while (Advance(numbers, largest));
    }

    private static bool Advance(int[] numbers, int largest)
    {
        for (int i = numbers.Length - 1; i >= 0; i--)
        {
            if (numbers[i] < largest)
            {
                numbers[i]++;
                return true;
            }

            numbers[i] = 1;
        }

        return false;
    }

    private static int GreatestCommonDivisor(int a, int b) => b == 0 ? a : GreatestCommonDivisor(b, a % b);

    private static string Text(IReadOnlyList<WeighedPart> elements, int[] numbers) => string.Concat(
        elements.Select((element, i) => numbers[i] == 1
            ? element.Symbol
            : element.Symbol + numbers[i].ToString(CultureInfo.InvariantCulture)));
}
