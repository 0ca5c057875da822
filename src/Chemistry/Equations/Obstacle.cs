using System.Numerics;
using Calx.Chemistry.Formulas;

namespace Calx.Chemistry.Equations;

/// <summary>Says in words what keeps an equation from being balanced.</summary>
internal static class Obstacle
{
    /// <summary>The only solution is not positive: species on the wrong side, or that take no part.</summary>
    public static BalancingResult NotPositive(Equation equation, ConservedAmounts amounts, BigInteger[] solution)
    {
        if (OneSided(amounts) is { } oneSided)
        {
            return oneSided;
        }

        // Fewer species count as the wrong ones; where as many are on either sign, the first species is right.
        int balance = solution.Sum(amount => amount.Sign);
        bool mixed = Math.Abs(balance) < solution.Count(amount => !amount.IsZero);
        int right = balance != 0 ? Math.Sign(balance) : Array.Find(solution, amount => !amount.IsZero).Sign;
        int wrong = mixed ? -right : 0;
        string[] formulas = [.. Enumerable.Range(0, solution.Length)
            .Where(i => solution[i].Sign == wrong)
            .Select(i => PlainText(equation, i))];
        return wrong == 0
            ? Without(formulas)
            : new BalancingResult.CannotBalance(
                $"it balances only with a negative amount of {Listed(formulas)}", formulas);
    }

    /// <summary>Some species are 0 in every solution without negative numbers.</summary>
    public static BalancingResult OnlyWithout(Equation equation, ConservedAmounts amounts, ulong missing)
        => OneSided(amounts) ?? Without([.. Enumerable.Range(0, amounts.Columns)
            .Where(i => (missing & (1UL << i)) != 0)
            .Select(i => PlainText(equation, i))]);

    /// <summary>No numbers but zeros: the fewest elements (and charge) that already contradict each other.</summary>
    public static BalancingResult Contradiction(ConservedAmounts amounts)
    {
        if (OneSided(amounts) is { } oneSided)
        {
            return oneSided;
        }

        List<int> rows = [.. Enumerable.Range(0, amounts.Rows)];
        for (int row = 0; row < amounts.Rows; row++)
        {
            int[] others = [.. rows.Where(other => other != row)];
            if (Balancer.HasPositive(CellsOf(amounts, others), amounts.Columns) == false)
            {
                rows.Remove(row);
            }
        }

        string[] names = [.. rows.Select(amounts.Name)];
        return new BalancingResult.CannotBalance($"{Listed(names)} cannot be balanced at the same time", names);
    }

    private static BalancingResult.CannotBalance? OneSided(ConservedAmounts amounts)
    {
        var reasons = new List<string>();
        var names = new List<string>();
        for (int row = 0; row < amounts.Rows; row++)
        {
            ReadOnlySpan<long> cells = amounts.Row(row);
            bool plus = cells.ContainsAnyInRange(1, long.MaxValue);
            bool minus = cells.ContainsAnyInRange(long.MinValue, -1);
            if (plus != minus)
            {
                names.Add(amounts.Name(row));
                reasons.Add(SideOf(amounts, row, plus));
            }
        }

        return names.Count == 0 ? null : new BalancingResult.CannotBalance(string.Join("; ", reasons), names);
    }

    // Charge has two signs: a positive row is one with positive ions on the left or negative ones on the right.
    private static string SideOf(ConservedAmounts amounts, int row, bool plus)
        => amounts.Name(row) != ConservedAmounts.Charge
            ? $"{amounts.Name(row)} is on the {(plus ? "left" : "right")} only"
            : $"the charge can only be {(plus ? "higher" : "lower")} on the left than on the right";

    private static BalancingResult.CannotBalance Without(string[] formulas)
        => new($"it balances only without {Listed(formulas)}", formulas);

    private static string PlainText(Equation equation, int species)
    {
        Formula formula = equation.Terms[species].Formula;
        return formula.ToString();
    }

    private static string Listed(string[] names) => names.Length switch
    {
        1 => names[0],
        _ => $"{string.Join(", ", names[..^1])} and {names[^1]}",
    };

    private static long[] CellsOf(ConservedAmounts amounts, int[] rows)
        => [.. rows.SelectMany(row => amounts.Row(row).ToArray())];
}
