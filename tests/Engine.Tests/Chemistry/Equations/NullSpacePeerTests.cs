using Calx.Chemistry.Equations;

namespace Calx.Engine.Tests.Chemistry.Equations;

/// <summary>Coefficients beside sympy's exact null space (computed/null_space.csv; the script beside it tells how the
/// equations were made).</summary>
public sealed class NullSpacePeerTests
{
    private static readonly string[][] Rows = ReferenceEquations.Rows(Path.Combine("computed", "null_space.csv"));

    [Fact]
    public void All_300_equations_have_the_coefficients_found_by_sympy()
    {
        string[][] balanced = [.. Rows.Where(row => row[1] != "none")];
        Assert.Equal(300, balanced.Length);
        Assert.All(balanced, row => Assert.Equal(
            ReferenceEquations.Numbers(row[1]),
            Assert.IsType<BalancingResult.Balanced>(Equation.Parse(row[0]).Value.Balance()).Coefficients));
    }

    [Fact]
    public void All_60_with_a_species_on_the_wrong_side_are_declined()
    {
        string[][] turned = [.. Rows.Where(row => row[1] == "none")];
        Assert.Equal(60, turned.Length);
        Assert.All(turned, row => Assert.IsType<BalancingResult.CannotBalance>(Equation.Parse(row[0]).Value.Balance()));
    }
}
