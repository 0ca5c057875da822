using Calx.Chemistry.Equations;

namespace Calx.Engine.Tests.Chemistry.Equations;

// Atoms counted by hand.
public sealed class WrittenCheckTests
{
    [Theory]
    [InlineData("2Mg + O2 -> 2MgO")]
    [InlineData("MgO -> MgO")]
    [InlineData("MnO4^- + 5Fe^2+ + 8H^+ -> Mn^2+ + 5Fe^3+ + 4H2O")]
    public void A_balanced_equation_in_lowest_numbers_is_right(string text)
        => Assert.IsType<WrittenCheck.Lowest>(Equation.Parse(text).Value.CheckAsWritten());

    [Theory]
    [InlineData("4Mg + 2O2 -> 4MgO", 2)]
    [InlineData("9H2 + 9Cl2 -> 18HCl", 9)]
    public void A_multiple_is_balanced_and_can_be_divided(string text, long factor)
        => Assert.Equal(factor, Assert.IsType<WrittenCheck.Multiple>(Equation.Parse(text).Value.CheckAsWritten()).Factor);

    [Theory]
    [InlineData("Mg + O2 -> MgO", "oxygen: 2 on the left, 1 on the right")]
    [InlineData("2Mg + O2 -> MgO", "magnesium: 2 on the left, 1 on the right; oxygen: 2 on the left, 1 on the right")]
    [InlineData("Fe^2+ -> Fe^3+ + 2e-", "charge: +2 on the left, +1 on the right")]
    [InlineData("Cl2 + e- -> 2Cl-", "charge: -1 on the left, -2 on the right")]
    [InlineData("99999999H999999999 -> H", null)]
    public void What_differs_is_counted_on_both_sides(string text, string? imbalances)
    {
        var read = Equation.Parse(text);
        string? said = read.Succeeded
            ? string.Join("; ", Assert.IsType<WrittenCheck.NotBalanced>(read.Value.CheckAsWritten()).Imbalances)
            : null;
        Assert.Equal(imbalances, said);
    }

    [Fact]
    public void The_largest_sums_stay_within_64_bits()
    {
        string side = string.Join(" + ", Enumerable.Repeat("99999999(H1000)999999", 39));
        var check = Assert.IsType<WrittenCheck.NotBalanced>(Equation.Parse($"{side} -> H").Value.CheckAsWritten());
        Assert.Equal(39L * 99_999_999 * 999_999_000, check.Imbalances[0].Left);
    }
}
