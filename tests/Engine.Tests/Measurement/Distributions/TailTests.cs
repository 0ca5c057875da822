using System.Globalization;
using Calx.Engine.Tests.Measurement.Statistics;
using Calx.Measurement.Distributions;

namespace Calx.Engine.Tests.Measurement.Distributions;

/// <summary>Tails and quantiles against 50-digit values (computed/distribution_tails.csv, mpmath; script beside it).</summary>
public sealed class TailTests
{
    private const double TailPrecision = 1e-12;
    private const double PointPrecision = 1e-12;

    public static TheoryData<string> Distributions => ["normal", "t", "chi2", "F", "beta"];

    [Theory]
    [MemberData(nameof(Distributions))]
    public void Tails_agree_with_50_digit_values(string distribution)
    {
        foreach (TailRow row in TailRow.All(distribution))
        {
            double found = Tail(row);
            Assert.True(
                Math.Abs(found - row.P) <= TailPrecision * row.P,
                $"{row}: tail {found:r}, off by {(found - row.P) / row.P:g3}.");
        }
    }

    [Theory]
    [MemberData(nameof(Distributions))]
    public void Quantiles_agree_with_50_digit_values(string distribution)
    {
        foreach (TailRow row in TailRow.All(distribution))
        {
            double found = Quantile(row);
            Assert.True(
                Math.Abs(found - row.X) <= PointPrecision * row.X,
                $"{row}: quantile {found:r}, off by {(found - row.X) / row.X:g3}.");
        }
    }

    [Theory]
    [MemberData(nameof(Distributions))]
    public void The_tail_at_a_quantile_is_the_probability_asked_for(string distribution)
    {
        foreach (TailRow row in TailRow.All(distribution))
        {
            double found = Tail(row with { X = Quantile(row) });
            Assert.True(
                Math.Abs(found - row.P) <= TailPrecision * row.P,
                $"{row}: round trip {found:r}, off by {(found - row.P) / row.P:g3}.");
        }
    }

    [Fact]
    public void T_with_endless_degrees_of_freedom_is_normal()
    {
        foreach (TailRow row in TailRow.All("normal"))
        {
            Agree.Relative(1e-13, row.P, StudentT.Cumulative(-row.X, double.PositiveInfinity));
            Agree.Relative(1e-13, -row.X, StudentT.Quantile(row.P, double.PositiveInfinity));
        }
    }

    [Fact]
    public void T_approaches_the_normal_without_a_step_where_the_expansion_takes_over()
    {
        foreach (double p in (double[])[1e-10, 0.01, 0.4])
        {
            double exact = StudentT.Quantile(p, 0.99e10);
            Agree.Relative(1e-9, exact, StudentT.Quantile(p, 1.01e10));
            Agree.Relative(1e-9, StudentT.Cumulative(exact, 0.99e10), StudentT.Cumulative(exact, 1.01e10));
        }
    }

    [Fact]
    public void Coverage_factors_agree_with_table_G2_of_JCGM_100()
    {
        // JCGM 100:2008, table G.2, p = 95 %: quoted from memory.
        (double Dof, double Factor)[] table = [(1, 12.71), (2, 4.30), (3, 3.18), (10, 2.23), (50, 2.01), (100, 1.984)];
        foreach ((double dof, double factor) in table)
        {
            Agree.Within(factor > 10 ? 0.005 : factor == 1.984 ? 0.0005 : 0.005, factor, StudentT.Quantile(0.975, dof));
        }
    }

    [Fact]
    public void Probabilities_out_of_range_are_refused()
    {
        foreach (double p in (double[])[0, 1, -0.1, double.NaN])
        {
            Assert.Throws<ArgumentOutOfRangeException>(() => StandardNormal.Quantile(p));
            Assert.Throws<ArgumentOutOfRangeException>(() => StudentT.Quantile(p, 3));
            Assert.Throws<ArgumentOutOfRangeException>(() => ChiSquared.Quantile(p, 3));
            Assert.Throws<ArgumentOutOfRangeException>(() => FisherF.Quantile(p, 3, 4));
        }

        Assert.Throws<ArgumentOutOfRangeException>(() => StudentT.Quantile(0.5, 0));
        Assert.Throws<ArgumentOutOfRangeException>(() => BetaFunction.RegularizedIncomplete(1, 0, 0.5));
    }

    [Fact]
    public void Ends_of_the_scale_have_the_probabilities_0_and_1()
    {
        Assert.Equal(0, StudentT.Cumulative(double.NegativeInfinity, 2));
        Assert.Equal(1, StudentT.Cumulative(double.PositiveInfinity, 2));
        Assert.Equal(0.5, StudentT.Cumulative(0, 2));
        Assert.Equal(0, StudentT.Quantile(0.5, 2));
        Assert.Equal(0, ChiSquared.Cumulative(0, 2));
        Assert.Equal(1, ChiSquared.UpperTail(-1, 2));
        Assert.Equal(1, FisherF.Cumulative(double.PositiveInfinity, 2, 2));
        Assert.Equal(1, StandardNormal.Cumulative(40));
        Assert.Equal(0, StandardNormal.Cumulative(-40));
    }

    private static double Tail(TailRow row) => (row.Distribution, row.Tail) switch
    {
        ("normal", "upper") => StandardNormal.UpperTail(row.X),
        ("t", "upper") => StudentT.UpperTail(row.X, row.First),
        ("chi2", "upper") => ChiSquared.UpperTail(row.X, row.First),
        ("chi2", "lower") => ChiSquared.Cumulative(row.X, row.First),
        ("F", "upper") => FisherF.UpperTail(row.X, row.First, row.Second),
        ("F", "lower") => FisherF.Cumulative(row.X, row.First, row.Second),
        _ => BetaFunction.RegularizedIncomplete(row.First, row.Second, row.X),
    };

    private static double Quantile(TailRow row) => (row.Distribution, row.Tail) switch
    {
        ("normal", "upper") => -StandardNormal.Quantile(row.P),
        ("t", "upper") => -StudentT.Quantile(row.P, row.First),
        ("chi2", "upper") => ChiSquared.UpperQuantile(row.P, row.First),
        ("chi2", "lower") => ChiSquared.Quantile(row.P, row.First),
        ("F", "upper") => FisherF.UpperQuantile(row.P, row.First, row.Second),
        ("F", "lower") => FisherF.Quantile(row.P, row.First, row.Second),
        _ => BetaFunction.Quantile(row.First, row.Second, row.P),
    };

    private sealed record TailRow(string Distribution, double First, double Second, string Tail, double P, double X)
    {
        public static IEnumerable<TailRow> All(string distribution) =>
            from line in File.ReadLines(Path.Combine(AppContext.BaseDirectory, "reference", "computed", "distribution_tails.csv"))
            let cells = line.Split(',')
            where cells[0] == distribution
            select new TailRow(cells[0], Number(cells[1]), Number(cells[2]), cells[3], Number(cells[4]), Number(cells[5]));

        private static double Number(string text)
            => text.Length == 0 ? double.NaN : double.Parse(text, CultureInfo.InvariantCulture);
    }
}
