using System.Globalization;
using Calx.Measurement.Weighing;

namespace Calx.Engine.Tests.Measurement.Weighing;

public class OimlTests
{
    // oiml_r111_mpe.csv: OIML R 111-1:2004, Table 1.
    public static TheoryData<string, WeightClass, string> WeightLimits() =>
        [.. ReferenceTable.Rows("oiml_r111_mpe.csv")
            .SelectMany(row => Enum.GetValues<WeightClass>().Select(c => (row[0], c, row[1 + (int)c])))];

    [Theory]
    [MemberData(nameof(WeightLimits))]
    public void Weight_limits_agree_with_OIML_R_111(string nominal, WeightClass weightClass, string milligrams)
    {
        WeightTolerance found = WeightTolerance.Of(weightClass, Number(nominal));
        if (milligrams.Length == 0)
        {
            Assert.IsType<WeightTolerance.NotDefined>(found);
            return;
        }

        Assert.Equal(
            Number(milligrams) / 1000, Assert.IsType<WeightTolerance.Limit>(found).MaximumPermissibleErrorInGrams, 12);
    }

    [Fact]
    public void A_weight_known_by_class_has_its_limit_over_root_three() =>
        // 100 g of class M1: 5.0 mg / 1.7320508 = 2.8868 mg, by hand.
        Assert.Equal(
            0.0028868,
            Assert.IsType<WeightTolerance.Limit>(WeightTolerance.Of(WeightClass.M1, 100)).StandardUncertaintyInGrams,
            7);

    [Fact]
    public void A_nominal_mass_that_is_no_weight_is_said_to_have_no_limit() => Assert.Equal(
        "class M1 has no limit for a weight of 30 g in the table from 1 mg to 1 kg",
        Assert.IsType<WeightTolerance.NotDefined>(WeightTolerance.Of(WeightClass.M1, 30)).Reason);

    // oiml_r76_mpe.csv: OIML R 76-1:2006, Table 6; a load belongs to a zone from above its lower to its upper end.
    public static TheoryData<BalanceClass, double, double, double> BalanceLimits() =>
        [.. ReferenceTable.Rows("oiml_r76_mpe.csv").Select(row => (
            Enum.Parse<BalanceClass>(row[0]),
            Number(row[1]),
            row[2].Length == 0 ? double.PositiveInfinity : Number(row[2]),
            Number(row[3])))];

    [Theory]
    [MemberData(nameof(BalanceLimits))]
    public void Balance_limits_step_up_at_the_ends_of_the_zones_of_OIML_R_76(
        BalanceClass balanceClass, double from, double to, double mpe)
    {
        const double interval = 0.001;
        Assert.Equal(mpe * interval, InitialLimit(balanceClass, from + 1, interval), 12);
        double end = double.IsInfinity(to) ? from * 10 : to;
        Assert.Equal(mpe * interval, InitialLimit(balanceClass, end, interval), 12);
        // In service twice as much (OIML R 76-1:2006, 3.5.2; from memory).
        var inService = BalanceTolerance.Of(balanceClass, end * interval, interval);
        Assert.Equal(
            2 * mpe * interval, Assert.IsType<BalanceTolerance.Limit>(inService).MaximumPermissibleErrorInGrams, 12);
    }

    [Theory]
    [InlineData(BalanceClass.II, 100_001)]
    [InlineData(BalanceClass.III, 10_001)]
    [InlineData(BalanceClass.IIII, 1_001)]
    public void A_load_beyond_the_class_has_no_limit(BalanceClass balanceClass, double intervals) =>
        Assert.IsType<BalanceTolerance.BeyondClass>(BalanceTolerance.Of(balanceClass, intervals * 0.1, 0.1));

    // oiml_r76_classes.csv: OIML R 76-1:2006, Table 3.
    public static TheoryData<string[]> ClassRows() => [.. ReferenceTable.Rows("oiml_r76_classes.csv")];

    [Theory]
    [MemberData(nameof(ClassRows))]
    public void Classes_admitted_agree_with_OIML_R_76(string[] row)
    {
        var balanceClass = Enum.Parse<BalanceClass>(row[0]);
        double interval = Number(row[1]);
        double least = Number(row[3]);
        var atLeast = new BalanceClassification.Admissible(balanceClass, Number(row[5]) * interval);
        Assert.Contains(
            BalanceClassification.Of(least * interval, interval),
            found => found.Class == atLeast.Class
                && Math.Abs(found.MinimumCapacityInGrams - atLeast.MinimumCapacityInGrams) < 1e-9 * interval);
        Assert.DoesNotContain(
            BalanceClassification.Of((least - 1) * interval, interval), found => found.Class == balanceClass);
        if (row[4].Length > 0)
        {
            double most = Number(row[4]);
            Assert.Contains(BalanceClassification.Of(most * interval, interval), f => f.Class == balanceClass);
            Assert.DoesNotContain(BalanceClassification.Of((most + 1) * interval, interval), f => f.Class == balanceClass);
        }
    }

    private static double InitialLimit(BalanceClass balanceClass, double intervals, double interval) =>
        Assert.IsType<BalanceTolerance.Limit>(
            BalanceTolerance.Of(balanceClass, intervals * interval, interval, inService: false))
            .MaximumPermissibleErrorInGrams;

    private static double Number(string text) => double.Parse(text, CultureInfo.InvariantCulture);
}
