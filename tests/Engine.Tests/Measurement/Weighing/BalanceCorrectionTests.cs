using Calx.Measurement.Numbers;
using Calx.Measurement.Uncertainty;
using Calx.Measurement.Weighing;

namespace Calx.Engine.Tests.Measurement.Weighing;

public class BalanceCorrectionTests
{
    private static readonly Balance Centigram = new(0.01, 0);

    [Fact]
    public void One_check_weight_gives_a_shift_and_no_span()
    {
        var limit = Assert.IsType<WeightTolerance.Limit>(WeightTolerance.Of(WeightClass.M2, 50));
        BalanceCorrection found = BalanceCorrection.From(Centigram, [new CheckWeighing(50, limit, Shown(50.03m))]);
        Assert.Equal(0.03, found.ZeroShift.Value, 12);
        // M2 at 50 g: 10 mg / sqrt(3) = 5.774 mg; rounding 2.887 mg; together 6.455 mg, by hand.
        Assert.Equal(0.006455, found.ZeroShift.StandardUncertainty, 6);
        Assert.Equal(0, found.SpanError.StandardUncertainty);
        Assert.Equal(0, found.DegreesOfFreedom);
    }

    [Fact]
    public void Errors_on_a_line_are_explained_by_shift_and_span()
    {
        BalanceCorrection found = BalanceCorrection.From(
            Centigram,
            [new(0, 0, Shown(0.02m)), new(50, 0, Shown(50.03m)), new(100, 0, Shown(100.04m)), new(200, 0, Shown(200.06m))]);
        Assert.Equal(0.02, found.ZeroShift.Value, 10);
        Assert.Equal(0.0002, found.SpanError.Value, 12);
        Assert.Equal(0, found.ChiSquared, 9);
        Assert.Equal(2, found.DegreesOfFreedom);
        Assert.Equal(0.05, found.ErrorAt(150).Value, 10);
    }

    [Fact]
    public void Equal_uncertainties_give_the_ordinary_line_with_its_usual_uncertainty()
    {
        // Loads 0, 1, 2 g, errors 0.00, 0.03, 0.00 g: slope 0, mean 0.01 by symmetry; u(slope) = u/sqrt(2),
        // u(mean) = u/sqrt(3), chi squared = (0.01² + 0.02² + 0.01²)/u² with u² = 0.01²/12, by hand.
        BalanceCorrection found = BalanceCorrection.From(
            Centigram, [new(0, 0, Shown(0.00m)), new(1, 0, Shown(1.03m)), new(2, 0, Shown(2.00m))]);
        double u = 0.01 / Math.Sqrt(12);
        Assert.Equal(0, found.SpanError.Value, 12);
        Assert.Equal(u / Math.Sqrt(2), found.SpanError.StandardUncertainty, 12);
        Assert.Equal(u / Math.Sqrt(3), found.ErrorAt(1).StandardUncertainty, 12);
        Assert.Equal(0.01, found.ErrorAt(1).Value, 12);
        Assert.Equal(72, found.ChiSquared, 8);
        Assert.Equal(1, found.DegreesOfFreedom);
        // Chi squared of 72 with one degree of freedom is 8.485 standard deviations, two-sided: 2.15e-17 (tables).
        Assert.InRange(found.ResidualProbability, 2.0e-17, 2.3e-17);
    }

    [Fact]
    public void A_precise_weight_counts_more_than_a_poor_one()
    {
        BalanceCorrection found = BalanceCorrection.From(
            Centigram, [new(100, 0, Shown(100.00m)), new(100, 1, Shown(100.50m))]);
        Assert.InRange(found.ZeroShift.Value, 0, 0.0001);
    }

    [Fact]
    public void A_certificate_without_weighings_is_refused() =>
        Assert.Throws<ArgumentException>(() => BalanceCorrection.From(Centigram, []));

    private static WrittenNumber Shown(decimal grams) => new(grams);
}
