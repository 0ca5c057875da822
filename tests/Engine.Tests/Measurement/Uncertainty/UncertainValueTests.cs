using Calx.Measurement.Uncertainty;
using Calx.Tests;
using CsCheck;

namespace Calx.Engine.Tests.Measurement.Uncertainty;

public class UncertainValueTests
{
    private static readonly Gen<UncertainValue> Quantity =
        Gen.Select(Gen.Double[-1e3, 1e3], Gen.Double[0, 10], Gen.Double[1, 50], (value, u, dof) => UncertainValue.Of("x", value, u, dof));

    [Fact]
    public void A_quantity_less_itself_is_0_without_uncertainty()
        => Quantity.Always(x =>
        {
            UncertainValue difference = x - x;
            Assert.Equal((0.0, 0.0), (difference.Value, difference.StandardUncertainty));
        });

    [Fact]
    public void A_quantity_divided_by_itself_is_1_without_uncertainty_to_rounding()
        => Quantity.Where(x => Math.Abs(x.Value) > 1e-3).Always(x =>
        {
            UncertainValue ratio = x / x;
            Assert.Equal(1, ratio.Value);
            Assert.True(ratio.StandardUncertainty <= 1e-15 * x.RelativeStandardUncertainty);
        });

    [Fact]
    public void Sums_and_products_do_not_depend_on_the_order_of_two()
        => Gen.Select(Quantity, Quantity).Always((x, y) =>
        {
            Same(x + y, y + x);
            Same(x * y, y * x);
            Same(x - y, -(y - x));
        });

    [Fact]
    public void Two_inputs_with_the_same_name_and_numbers_are_independent()
    {
        UncertainValue difference = UncertainValue.Of("m", 5, 0.3) - UncertainValue.Of("m", 5, 0.4);
        Assert.Equal(0.5, difference.StandardUncertainty, 1e-15);
    }

    [Fact]
    public void Differences_that_share_a_weighing_are_correlated()
    {
        // By hand: cov(after - before, before - empty) = -u², each variance 2u², so r = -1/2.
        UncertainValue empty = UncertainValue.Of("empty", 30.00, 0.007);
        UncertainValue before = UncertainValue.Of("before", 30.24, 0.007);
        UncertainValue after = UncertainValue.Of("after", 30.40, 0.007);
        Assert.Equal(-0.5, UncertainValue.Correlation(after - before, before - empty), 1e-12);
        Assert.Equal(-0.007 * 0.007, UncertainValue.Covariance(after - before, before - empty), 1e-18);
    }

    [Fact]
    public void Budget_lists_the_inputs_in_order_of_first_appearance_and_its_shares_sum_to_1()
    {
        UncertainValue a = UncertainValue.Of("a", 2, 0.1);
        UncertainValue b = UncertainValue.Of("b", 3, 0.2);
        IReadOnlyList<BudgetEntry> budget = ((3 * b) - (4 * a) + b).Budget;
        Assert.Equal(["b", "a"], budget.Select(entry => entry.Input.Name));
        Assert.Equal([4.0, -4.0], budget.Select(entry => entry.Sensitivity));
        Assert.Equal(0.8, budget[0].Contribution, 1e-15);
        Assert.Equal(0.4, budget[1].Contribution, 1e-15);
        Assert.Equal(0.8, budget[0].Share, 1e-15);
        Assert.Equal(0.2, budget[1].Share, 1e-15);
    }

    [Fact]
    public void Budget_shares_of_correlated_inputs_sum_to_1()
    {
        IReadOnlyList<UncertainValue> x = Pair(r: -0.9);
        Assert.Equal(1, ((2 * x[0]) + x[1]).Budget.Sum(entry => entry.Share), 1e-12);
    }

    [Fact]
    public void Fully_correlated_inputs_add_their_uncertainties_and_opposed_ones_cancel()
    {
        // JCGM 100:2008, 5.2.2 NOTE 1: with r = +1 the combined uncertainty is the linear sum.
        IReadOnlyList<UncertainValue> together = Pair(r: 1);
        IReadOnlyList<UncertainValue> opposed = Pair(r: -1);
        Assert.Equal(0.3, (together[0] + together[1]).StandardUncertainty, 1e-12);
        Assert.Equal(0.1, (opposed[0] + opposed[1]).StandardUncertainty, 1e-12);
    }

    [Fact]
    public void Correlation_is_known_even_where_the_parts_were_made_one_by_one()
    {
        var first = new UncertainInput("x", 1, 0.1);
        var second = new UncertainInput("y", 2, 0.2);
        IReadOnlyList<UncertainValue> tied = UncertainValue.Correlated([first, second], new double[,] { { 1, 0.5 }, { 0.5, 1 } });
        UncertainValue mixed = UncertainValue.Of(first) + tied[1];
        Assert.Equal((tied[0] + tied[1]).StandardUncertainty, mixed.StandardUncertainty, 1e-15);
    }

    [Fact]
    public void An_input_in_two_sets_of_correlated_inputs_is_refused()
    {
        var x = new UncertainInput("x", 1, 0.1);
        double[,] half = { { 1, 0.5 }, { 0.5, 1 } };
        IReadOnlyList<UncertainValue> one = UncertainValue.Correlated([x, new UncertainInput("y", 1, 0.1)], half);
        IReadOnlyList<UncertainValue> two = UncertainValue.Correlated([x, new UncertainInput("z", 1, 0.1)], half);
        Assert.Contains("The input x", Assert.Throws<InvalidOperationException>(() => one[1] + two[1]).Message, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData(1.2, 1.2, 0, "the correlation of x and y is 1.2, outside -1 to 1")]
    [InlineData(0.5, 0.4, 0, "the correlation of x and y is given as two different numbers")]
    [InlineData(0.9, 0.9, -0.9, "the correlations contradict each other: no quantities can have them (the matrix has a negative eigenvalue)")]
    public void A_matrix_that_no_quantities_can_have_is_refused(double xy, double yx, double xz, string reason)
    {
        UncertainInput[] inputs = [new("x", 0, 1), new("y", 0, 1), new("z", 0, 1)];
        double[,] matrix = { { 1, xy, xz }, { yx, 1, 0.9 }, { xz, 0.9, 1 } };
        ArgumentException fault = Assert.Throws<ArgumentException>(() => UncertainValue.Correlated(inputs, matrix));
        Assert.StartsWith(reason, fault.Message, StringComparison.Ordinal);
    }

    [Fact]
    public void Sum_of_20000_values_takes_memory_in_proportion_to_them()
    {
        UncertainValue[] values = [.. Enumerable.Range(0, 20_000).Select(i => UncertainValue.Of("x", i, 0.01))];
        long before = GC.GetAllocatedBytesForCurrentThread();
        UncertainValue sum = UncertainValue.Sum(values);
        Assert.Equal(0.01 * Math.Sqrt(20_000), sum.StandardUncertainty, 1e-9);
        Assert.Equal(20_000, sum.Budget.Count);
        Assert.Equal(199_990_000, sum.Value);
        // Some 200 bytes a value; adding one after the other would take 3 GB, and time likewise.
        Assert.True(GC.GetAllocatedBytesForCurrentThread() - before < 20_000_000);
    }

    [Fact]
    public void Sums_that_share_many_inputs_count_each_input_once()
    {
        // 40 inputs of u = 0.1; each of 25 sums holds all of them, so that each input has sensitivity 25.
        UncertainValue[] inputs = [.. Enumerable.Range(0, 40).Select(i => UncertainValue.Of("x", i, 0.1))];
        UncertainValue sum = UncertainValue.Sum(Enumerable.Range(0, 25).Select(_ => UncertainValue.Sum(inputs)));
        Assert.Equal(40, sum.Budget.Count);
        Assert.All(sum.Budget, entry => Assert.Equal(25, entry.Sensitivity));
        Assert.Equal(25 * 0.1 * Math.Sqrt(40), sum.StandardUncertainty, 1e-12);
        Assert.Equal(0, (sum - (25 * UncertainValue.Sum(inputs))).StandardUncertainty);
    }

    [Fact]
    public void Coverage_factor_is_Students_t_for_truncated_degrees_of_freedom()
    {
        // JCGM 100:2008, table G.2: t95(10) = 2.23, t95(∞) = 1.960, t99(16) = 2.92.
        Assert.Equal(2.23, UncertainValue.Of("x", 1, 0.1, 10.9).CoverageFactor(), 0.005);
        Assert.Equal(1.960, UncertainValue.Of("x", 1, 0.1).CoverageFactor(), 0.0005);
        Assert.Equal(2.92, UncertainValue.Of("x", 1, 0.1, 16.8).CoverageFactor(0.99), 0.005);
        CoverageInterval interval = UncertainValue.Of("x", 1, 0.1, 10).Interval();
        Assert.Equal(2 * 0.223, interval.Width, 0.001);
        Assert.True(interval.Contains(1.22));
        Assert.False(interval.Contains(1.23));
    }

    [Fact]
    public void Degrees_of_freedom_of_equal_independent_components_add_up()
    {
        // JCGM 100:2008, G.4.1: for n equal components with ν each, the effective number is n ν.
        UncertainValue sum = UncertainValue.Sum(Enumerable.Range(0, 4).Select(_ => UncertainValue.Of("x", 1, 0.1, 5)));
        Assert.Equal(20, sum.DegreesOfFreedom, 1e-9);
        Assert.Equal(double.PositiveInfinity, UncertainValue.Exact(3).DegreesOfFreedom);
    }

    [Fact]
    public void Values_are_consistent_when_they_differ_by_no_more_than_k_uncertainties_of_the_difference()
    {
        UncertainValue offset = UncertainValue.Of("zero", 0, 1);
        UncertainValue left = UncertainValue.Of("x", 10.0, 0.03) + offset;
        UncertainValue near = UncertainValue.Of("y", 10.09, 0.04) + offset;
        UncertainValue far = UncertainValue.Of("z", 10.11, 0.04) + offset;
        Assert.True(left.IsConsistentWith(near));
        Assert.False(left.IsConsistentWith(far));
        Assert.True(left.IsConsistentWith(far, k: 3));
    }

    [Fact]
    public void Where_there_is_no_value_or_derivative_the_reason_is_told()
    {
        UncertainValue zero = UncertainValue.Of("x", 0, 0.1);
        UncertainValue other = UncertainValue.Of("y", 0, 0.1);
        Undefined("division by zero", () => 1 / zero);
        Undefined("sqrt has no derivative where its argument is 0", () => UncertainValue.Sqrt(zero));
        Undefined("abs has no derivative where its argument is 0", () => UncertainValue.Abs(zero));
        Undefined("min has no derivative where its arguments are equal (0)", () => UncertainValue.Min(zero, other));
        Undefined("max has no derivative where its arguments are equal (0)", () => UncertainValue.Max(zero, other));
        Undefined("ln of 0 has no value: logarithms take numbers above 0", () => UncertainValue.Ln(zero));
        Undefined("0 cannot be raised to the negative power -1", () => UncertainValue.Pow(zero, -1));
        Undefined("^ has no derivative where its argument is 0", () => UncertainValue.Pow(zero, 0.5));
        Undefined(
            "-1 raised to an uncertain power has no derivative by the power",
            () => UncertainValue.Pow(UncertainValue.Exact(-1), zero + 2));
        Undefined("the result of exp is too large to compute with", () => UncertainValue.Exp(zero + 1000));
    }

    [Fact]
    public void Corners_are_no_trouble_for_numbers_without_uncertainty()
    {
        UncertainValue zero = UncertainValue.Exact(0);
        UncertainValue x = UncertainValue.Of("x", 2, 0.1);
        Assert.Equal(0, UncertainValue.Sqrt(zero).Value);
        Assert.Equal(0, UncertainValue.Abs(zero).Value);
        Assert.Equal(0.1, UncertainValue.Max(x, x).StandardUncertainty);
        Assert.Equal(0, UncertainValue.Pow(UncertainValue.Of("y", 0, 0.1), 2).StandardUncertainty);
    }

    private static IReadOnlyList<UncertainValue> Pair(double r)
        => UncertainValue.Correlated([new("x", 1, 0.1), new("y", 2, 0.2)], new double[,] { { 1, r }, { r, 1 } });

    private static void Undefined(string reason, Func<UncertainValue> calculation)
        => Assert.Equal(reason, Assert.Throws<UndefinedResultException>(calculation).Reason);

    private static void Same(UncertainValue left, UncertainValue right)
    {
        Assert.Equal(left.Value, right.Value);
        Assert.Equal(left.StandardUncertainty, right.StandardUncertainty, 1e-12 * left.StandardUncertainty);
        Assert.Equal(left.DegreesOfFreedom, right.DegreesOfFreedom, 1e-9 * left.DegreesOfFreedom);
    }
}
