using Calx.Chemistry.Equations;

namespace Calx.Engine.Tests.Chemistry.Equations;

public sealed class BalancingTests
{
    [Fact]
    public void All_73_equations_with_one_balancing_have_the_published_coefficients()
    {
        string[][] rows = ReferenceEquations.Rows("equations_unique.csv");
        Assert.Equal(73, rows.Length);
        Assert.All(rows, row => Assert.Equal(
            ReferenceEquations.Numbers(row[3]),
            Assert.IsType<BalancingResult.Balanced>(Equation.Parse(row[2]).Value.Balance()).Coefficients));
    }

    [Fact]
    public void All_8_equations_with_two_dimensions_of_balancings_are_said_to_have_many()
    {
        string[][] rows = ReferenceEquations.Rows("equations_nonunique.csv");
        Assert.Equal(8, rows.Length);
        Assert.All(rows, row =>
        {
            var many = Assert.IsType<BalancingResult.ManyBalances>(Equation.Parse(row[1]).Value.Balance());
            Assert.Equal(2, many.Elementary.Count);
            long[] valid = ReferenceEquations.Numbers(row[3]);
            Assert.True(IsSumOf(valid, many.Elementary), row[1]);
        });
    }

    [Fact]
    public void All_10_equations_without_a_balancing_are_declined_with_a_reason()
    {
        string[][] rows = ReferenceEquations.Rows("equations_impossible.csv");
        Assert.Equal(10, rows.Length);
        Assert.All(rows, row => Assert.NotEmpty(
            Assert.IsType<BalancingResult.CannotBalance>(Equation.Parse(row[1]).Value.Balance()).InTheWay));
    }

    // The reasons follow from counting atoms by hand.
    [Theory]
    [InlineData("C3H8 + O2 -> CO2", "hydrogen is on the left only")]
    [InlineData("MgO -> Mg3N2", "oxygen is on the left only; nitrogen is on the right only")]
    [InlineData("Fe2O3 + CO2 -> Fe + CO", "it balances only with a negative amount of CO2 and CO")]
    [InlineData("Fe^2+ -> Fe^3+", "iron and charge cannot be balanced at the same time")]
    [InlineData("Fe -> Fe^3+", "the charge can only be lower on the left than on the right")]
    [InlineData("Mg + O2 + H2O -> MgO + H2O2 + Mg", null)]
    [InlineData("CaCO3 -> CaO + C", "calcium and oxygen cannot be balanced at the same time")]
    [InlineData("Mg + H2O -> MgO + H2O", "it balances only without Mg and MgO")]
    [InlineData("H2O + CO2 -> H2O + CO", "it balances only without CO2 and CO")]
    [InlineData("H2O + CO2 + H2O2 -> H2O + CO + O2", null)]
    [InlineData("FeS2 + HNO3 -> Fe2(SO4)3 + NO + H2SO4", "hydrogen, nitrogen and oxygen cannot be balanced at the same time")]
    public void The_reason_names_what_stands_in_the_way(string text, string? reason)
    {
        BalancingResult result = Equation.Parse(text).Value.Balance();
        Assert.Equal(reason, (result as BalancingResult.CannotBalance)?.Reason);
    }

    // Worked by hand: each elementary balancing leaves out what it can.
    [Theory]
    [InlineData("C + O2 -> CO + CO2", "1 1 0 1; 2 1 2 0")]
    [InlineData("Mg + O2 + N2 -> MgO + Mg3N2", "2 1 0 2 0; 3 0 1 0 1")]
    [InlineData("H2O2 + H2O -> H2O + O2", "0 1 1 0; 2 0 2 1")]
    [InlineData("Fe + O2 -> Fe2O3 + Fe3O4", "3 2 0 1; 4 3 2 0")]
    public void The_elementary_balancings_are_in_lowest_numbers_and_sorted(string text, string elementary)
        => Assert.Equal(
            elementary,
            string.Join("; ", Assert.IsType<BalancingResult.ManyBalances>(Equation.Parse(text).Value.Balance())
                .Elementary.Select(way => string.Join(' ', way))));

    [Theory]
    [InlineData("Mg + O2 -> MgO", "2Mg + O2 -> 2MgO")]
    [InlineData("4Mg + 2 O2 = 4 MgO", "2Mg + O2 -> 2MgO")]
    [InlineData("N2(g) + H2(g) <=> NH3(g)", "N2(g) + 3H2(g) <=> 2NH3(g)")]
    [InlineData("CuSO4.5H2O → CuSO4 + H2O", "CuSO4·5H2O -> CuSO4 + 5H2O")]
    [InlineData("MnO4- + Fe^2+ + H+ -> Mn^2+ + Fe^3+ + H2O", "MnO4^- + 5Fe^2+ + 8H^+ -> Mn^2+ + 5Fe^3+ + 4H2O")]
    [InlineData("D2 + O2 -> D2O", "2D2 + O2 -> 2D2O")]
    [InlineData("Fe^3+ + e- -> Fe^2+", "Fe^3+ + e^- -> Fe^2+")]
    public void The_balanced_equation_is_written_out(string text, string balanced)
        => Assert.Equal(balanced, Assert.IsType<BalancingResult.Balanced>(Equation.Parse(text).Value.Balance()).Text);

    // The numbers are primes below a million (from memory). a p = b q for hydrogen and c r = b s for nitrogen have nothing
    // to cancel, so a = q r, b = p r and c = s p.
    [Fact]
    public void Coefficients_beyond_32_bits_are_exact()
    {
        const long p = 999_983;
        const long q = 999_979;
        const long r = 999_959;
        const long s = 999_961;
        Equation equation = Equation.Parse("H999983 + N999959 -> H999979N999961").Value;
        Assert.Equal([q * r, s * p, p * r], Assert.IsType<BalancingResult.Balanced>(equation.Balance()).Coefficients);
    }

    // The same with two more steps: products of four primes have 24 digits.
    [Fact]
    public void Coefficients_beyond_64_bits_are_said_to_be_too_large()
    {
        Equation equation = Equation.Parse("H999983 + N999959C999953 + O999883 -> H999979N999961 + C999931O999917").Value;
        Assert.Contains(
            "more than 18 digits", Assert.IsType<BalancingResult.Undecided>(equation.Balance()).Reason, StringComparison.Ordinal);
    }

    [Fact]
    public void A_search_with_too_many_ways_is_given_up_with_its_reason()
    {
        // 20 x 20 hydrocarbons of different ratios on either side: beyond 512 elementary balancings.
        string Side(int first) => string.Join(" + ", Enumerable.Range(0, 20).Select(i => $"C{2 + i}H{first + (7 * i * i)}O{1 + ((i * 5) % 11)}"));
        Assert.IsType<BalancingResult.Undecided>(Equation.Parse($"{Side(3)} -> {Side(5)}").Value.Balance());
    }

    [Fact]
    public void The_largest_textbook_puzzle_is_balanced()
    {
        // A puzzle that textbooks pass on; the coefficients are from memory.
        const string text = "[Cr(N2H4CO)6]4[Cr(CN)6]3 + KMnO4 + H2SO4 -> K2Cr2O7 + MnSO4 + CO2 + KNO3 + K2SO4 + H2O";
        Assert.Equal(
            [10L, 1176, 1399, 35, 1176, 420, 660, 223, 1879],
            Assert.IsType<BalancingResult.Balanced>(Equation.Parse(text).Value.Balance()).Coefficients);
    }

    // With two elementary balancings a and b the valid one is p a + q b with p, q >= 0: solve from two coefficients.
    private static bool IsSumOf(long[] valid, IReadOnlyList<IReadOnlyList<long>> ways)
    {
        for (int p = 0; p <= 60; p++)
        {
            for (int q = 0; q <= 60; q++)
            {
                // Halves and such occur: the sum may be a multiple of the valid one.
                long[] sum = [.. valid.Select((_, i) => (p * ways[0][i]) + (q * ways[1][i]))];
                if (sum[0] > 0 && sum[0] % valid[0] == 0 && sum.Select((s, i) => s == valid[i] * (sum[0] / valid[0])).All(equal => equal))
                {
                    return true;
                }
            }
        }

        return false;
    }
}
