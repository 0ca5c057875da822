using System.Numerics;

namespace Calx.Chemistry.Equations;

/// <summary>Decides between one, none and many balancings (docs/methods/balancing.md).</summary>
internal static class Balancer
{
    private const string ManyReason =
        "more than one balancing: the atoms alone do not fix the coefficients, and each is a sum of the elementary ones";

    private const string TooManyRays =
        "this equation has more elementary balancings than are searched for";

    private const string TooLarge = "the smallest whole numbers of this equation have more than 18 digits";

    public static BalancingResult Balance(Equation equation)
    {
        ConservedAmounts amounts = ConservedAmounts.Of(equation);
        long[][]? basis = NullSpace.Basis(amounts.Cells, amounts.Columns);
        if (basis is [long[] only])
        {
            return Array.TrueForAll(only, coefficient => coefficient > 0)
                ? new BalancingResult.Balanced(only, equation.WithCoefficients(only))
                : Obstacle.NotPositive(equation, amounts, Array.ConvertAll(only, coefficient => new BigInteger(coefficient)));
        }

        return basis is []
            ? Obstacle.Contradiction(amounts)
            : FromLarge(equation, amounts, Large(amounts, basis));
    }

    /// <summary>Whether positive numbers balance the chosen rows; null where the search was given up.</summary>
    public static bool? HasPositive(ReadOnlySpan<long> cells, int columns)
    {
        BigInteger[][] basis = NullSpace.LargeBasis(cells, columns);
        return ExtremeRays.Of(basis) is { } rays ? MissingFrom(rays, columns) == 0 && rays.Count > 0 : null;
    }

    /// <summary>The species that no ray contains, as bits.</summary>
    public static ulong MissingFrom(List<BigInteger[]> rays, int columns)
    {
        ulong missing = ulong.MaxValue >> (64 - columns);
        foreach (BigInteger[] ray in rays)
        {
            for (int i = 0; i < columns; i++)
            {
                missing &= ray[i].IsZero ? ulong.MaxValue : ~(1UL << i);
            }
        }

        return missing;
    }

    private static BigInteger[][] Large(ConservedAmounts amounts, long[][]? basis)
        => basis is null
            ? NullSpace.LargeBasis(amounts.Cells, amounts.Columns)
            : Array.ConvertAll(basis, vector => Array.ConvertAll(vector, entry => new BigInteger(entry)));

    private static BalancingResult FromLarge(Equation equation, ConservedAmounts amounts, BigInteger[][] basis)
    {
        if (basis.Length == 0)
        {
            return Obstacle.Contradiction(amounts);
        }

        if (ExtremeRays.Of(basis) is not { } rays)
        {
            return new BalancingResult.Undecided(TooManyRays);
        }

        ulong missing = MissingFrom(rays, amounts.Columns);
        if (missing != 0)
        {
            return basis.Length == 1 ? Obstacle.NotPositive(equation, amounts, basis[0])
                : rays.Count == 0 ? Obstacle.Contradiction(amounts)
                : Obstacle.OnlyWithout(equation, amounts, missing);
        }

        // With a positive solution the cone has the null space's dimension: one ray for one, several for more.
        long[][]? sorted = Sorted(rays);
        return sorted is null ? new BalancingResult.Undecided(TooLarge)
            : sorted is [long[] only] ? new BalancingResult.Balanced(only, equation.WithCoefficients(only))
            : new BalancingResult.ManyBalances(sorted, ManyReason);
    }

    private static long[][]? Sorted(List<BigInteger[]> rays)
    {
        if (rays.Exists(ray => Array.Exists(ray, entry => entry > long.MaxValue)))
        {
            return null;
        }

        long[][] sorted = [.. rays.Select(ray => Array.ConvertAll(ray, entry => (long)entry))];
        Array.Sort(sorted, (a, b) => a.AsSpan().SequenceCompareTo(b));
        return sorted;
    }
}
