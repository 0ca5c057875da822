using Calx.Chemistry.Equations;

namespace Calx.Engine.Tests.Chemistry.Equations;

// tests/reference/scripts/elementary_balancings.py: 180 random equations with their elementary balancings by sympy.
public sealed class ElementaryBalancingPeerTests
{
    [Fact]
    public void Another_tool_finds_the_same_elementary_balancings_of_180_random_equations()
    {
        string[][] rows = [.. ReferenceEquations.Rows(Path.Combine("computed", "elementary_balancings.csv"))];
        Assert.Equal(180, rows.Length);
        Assert.All(rows, row =>
        {
            (string outcome, string ways) = Equation.Parse(row[0]).Value.Balance() switch
            {
                BalancingResult.Balanced one => ("one", string.Join(' ', one.Coefficients)),
                BalancingResult.ManyBalances many => ("many", string.Join(';', many.Elementary.Select(way => string.Join(' ', way)))),
                BalancingResult.CannotBalance => ("none", row[2]),
                _ => ("undecided", ""),
            };
            Assert.Equal((row[1], row[2]), (outcome, ways));
        });
    }
}
