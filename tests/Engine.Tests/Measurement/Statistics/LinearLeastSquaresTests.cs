using Calx.Measurement.Statistics;

namespace Calx.Engine.Tests.Measurement.Statistics;

public class LinearLeastSquaresTests(ITestOutputHelper output)
{
    /// <summary>
    /// Certified values: NIST statistical reference datasets, linear regression. The least digits over coefficients, their
    /// standard deviations, and the rest of the table. Filip is the hard one: a polynomial of degree 10 on one side of 0.
    /// </summary>
    [Theory]
    [InlineData("Norris", 1, 13, 13, 13)]
    [InlineData("Pontius", 2, 13, 13, 13)]
    [InlineData("NoInt1", 0, 13, 13, 13)]
    [InlineData("Filip", 10, 12, 13, 13)]
    [InlineData("Longley", 0, 13, 13, 13)]
    [InlineData("Wampler1", 5, 13, 13, 13)]
    [InlineData("Wampler3", 5, 13, 13, 13)]
    [InlineData("Wampler4", 5, 13, 13, 13)]
    [InlineData("Wampler5", 5, 13, 13, 13)]
    public void Certified_coefficients_deviations_and_sums_of_squares_are_met(
        string dataset, int degree, double coefficients, double deviations, double rest)
    {
        LinearFit fit = Fit(dataset, degree);
        ReferenceRow[] certified = [.. ReferenceTable.Read("nist_linear_certified.csv").Rows
            .Where(row => row.Text("dataset") == dataset)];
        ReferenceRow[] coefficient = [.. certified.Where(row => row.Text("quantity")[0] == 'B')];
        Assert.Equal(coefficient.Length, fit.Coefficients.Count);

        double first = coefficient.Select((row, k) => Digits.Agreed(fit.Coefficients[k], row.Number("value"))).Min();
        double second = coefficient
            .Select((row, k) => Digits.Agreed(fit.StandardErrors[k], row.Number("standard_deviation"))).Min();
        double third = certified.Except(coefficient).Min(row => Digits.Agreed(Found(fit, row.Text("quantity")), row.Number("value")));
        output.WriteLine($"| {dataset} | {first:0.0} | {second:0.0} | {third:0.0} |");

        Assert.True(first >= coefficients && second >= deviations && third >= rest, $"{first} {second} {third}");
    }

    [Fact]
    public void A_column_that_depends_on_the_others_is_named()
    {
        var result = LinearLeastSquares.Fit([[1, 2, 3, 5], [0.1, 0.2, 0.3, 0.5]], [1, 2, 3, 4], true);
        Assert.Contains("column 2", Assert.IsType<LinearFitResult.NotFitted>(result).Reason, StringComparison.Ordinal);
    }

    [Fact]
    public void As_many_coefficients_as_points_leave_nothing_to_judge_by()
    {
        var result = LinearLeastSquares.Polynomial([1, 2, 3], [1, 4, 9], 2);
        Assert.Contains("at least 4", Assert.IsType<LinearFitResult.NotFitted>(result).Reason, StringComparison.Ordinal);
        Assert.Throws<ArgumentException>(() => LinearLeastSquares.Fit([], [1, 2], true));
        Assert.Throws<ArgumentException>(() => LinearLeastSquares.Fit([[1, 2]], [1, 2, 3], true));
        Assert.Throws<ArgumentOutOfRangeException>(() => LinearLeastSquares.Polynomial([1, 2], [1, 2], 0));
    }

    private static LinearFit Fit(string dataset, int degree)
    {
        ReferenceTable data = ReferenceTable.Read($"nist_linear_{dataset}.csv");
        double[] y = data.Column("y");
        LinearFitResult result = dataset switch
        {
            "Longley" => LinearLeastSquares.Fit([.. Enumerable.Range(1, 6).Select(k => data.Column($"x{k}"))], y, true),
            "NoInt1" => LinearLeastSquares.Fit([data.Column("x")], y, false),
            _ => LinearLeastSquares.Polynomial(data.Column("x"), y, degree),
        };
        return Assert.IsType<LinearFitResult.Fitted>(result).Fit;
    }

    private static double Found(LinearFit fit, string quantity) => quantity switch
    {
        "residual_sd" => fit.ResidualStandardDeviation,
        "r_squared" => fit.RSquared,
        "regression_df" => fit.RegressionDegreesOfFreedom,
        "regression_ss" => fit.RegressionSumOfSquares,
        "regression_ms" => fit.RegressionSumOfSquares / fit.RegressionDegreesOfFreedom,
        "f_statistic" => fit.FStatistic,
        "residual_df" => fit.ResidualDegreesOfFreedom,
        "residual_ss" => fit.ResidualSumOfSquares,
        "residual_ms" => fit.ResidualSumOfSquares / fit.ResidualDegreesOfFreedom,
        _ => throw new ArgumentException($"No certified quantity {quantity}.", nameof(quantity)),
    };
}
