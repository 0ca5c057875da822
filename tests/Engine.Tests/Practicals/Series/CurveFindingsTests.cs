using Calx.Chemistry.Elements;
using Calx.Measurement.Statistics.Series;
using Calx.Practicals.Findings;
using Calx.Practicals.Inference;

namespace Calx.Engine.Tests.Practicals.Series;

/// <summary>What is said of masses that follow a rate law: the law is written out in <see cref="Marble"/>.</summary>
public sealed class CurveFindingsTests
{
    [Fact]
    public void Half_life_loss_and_rate_of_an_exponential_lie_in_their_intervals()
    {
        ClassFindings findings = Analyse(Marble.Wide(t => Marble.Mass(1, t, halfLife: 1.5)));

        GroupCurve curve = findings.Groups.Single().Curve!;
        AssertHolds(curve, "halfLife", 1.5, within: 0.15);
        AssertHolds(curve, "finalLoss", 0.84, within: 0.04);
        // Where nothing is held back the loss begins at L ln 2 / T.
        AssertHolds(curve, "startRate", 0.84 * Math.Log(2) / 1.5, within: 0.06);
        Assert.Empty(curve.Disturbances);
    }

    [Theory]
    [InlineData(1, KineticOrder.First)]
    [InlineData(2, KineticOrder.Second)]
    public void The_order_is_the_one_whose_law_made_the_masses(int order, KineticOrder expected)
    {
        ClassFindings findings = Analyse(Marble.Wide(t => Marble.Mass(order, t, halfLife: 1.5)));

        Assert.Equal(expected, Assert.IsType<OrderVerdict.Prefers>(findings.Groups.Single().Curve!.Order).Order);
        Assert.Equal(expected, findings.Class.Curve!.Order);
    }

    [Fact]
    public void A_loss_of_a_few_steps_tells_no_order()
    {
        ClassFindings findings = Analyse(Marble.Wide(t => Marble.Mass(1, t, halfLife: 1.5, loss: 0.06)));

        Assert.Null(findings.Class.Curve!.Order);
        Assert.IsNotType<OrderVerdict.Prefers>(findings.Groups.Single().Curve!.Order);
    }

    [Fact]
    public void A_misread_point_is_named_with_its_time_and_changes_nothing()
    {
        string Slipped(double t) => t == 3 ? "146.03" : Marble.Mass(1, t, halfLife: 1.5);
        ClassFindings findings = Analyse(Marble.Wide(Slipped));

        GroupCurve curve = findings.Groups.Single().Curve!;
        Disturbance found = Assert.Single(curve.Disturbances);
        Assert.Equal("3", curve.Series!.Readings[found.First].Time.ToString());
        Assert.Contains(CurveLines.Of(findings), line => line.Contains("the point at 3 min lies", StringComparison.Ordinal));
        AssertHolds(curve, "halfLife", 1.5, within: 0.15);
    }

    // The first reading misread by 10 g, as the boat or a digit would: the others still show the law.
    [Fact]
    public void A_first_point_that_is_far_off_is_named_and_the_curve_stands()
    {
        GroupCurve curve = Analyse(Marble.Wide(t => t == 0 ? "146.50" : Marble.Mass(1, t, halfLife: 1.5))).Groups.Single().Curve!;

        Assert.Equal(0, Assert.Single(curve.Disturbances).First);
        AssertHolds(curve, "halfLife", 1.5, within: 0.25);
    }

    [Fact]
    public void Too_few_points_are_told_and_no_number_is_given()
    {
        ClassFindings findings = Analyse(
            "group | flask | with acid | 0 min | 0.5 min | 10 min", "1 | 78.40 | 119.06 | 136.50 | 136.33 | 135.66");

        GroupCurve curve = findings.Groups.Single().Curve!;
        Assert.All(curve.Quantities, q => Assert.Null(q.Value));
        Assert.Contains("here there are 3", curve.Reason, StringComparison.Ordinal);
    }

    [Fact]
    public void Groups_that_agree_are_pooled()
    {
        string[] one = Marble.Wide(t => Marble.Mass(1, t, halfLife: 1.4));
        string[] other = Marble.Wide(t => Marble.Mass(1, t, halfLife: 1.6));
        ClassFindings findings = Analyse(one[0], one[1], "2" + other[1][1..]);

        ClassCurveQuantity half = findings.Class.Curve!.Find("halfLife")!;
        Assert.Equal(2, half.Count);
        Assert.InRange(half.Value, 1.4, 1.6);
    }

    [Fact]
    public void Two_groups_far_apart_leave_a_half_life_open_and_never_below_nothing()
    {
        string[] one = Marble.Wide(t => Marble.Mass(1, t, halfLife: 1));
        string[] other = Marble.Wide(t => Marble.Mass(1, t, halfLife: 2.5));
        ClassFindings findings = Analyse(one[0], one[1], "2" + other[1][1..]);

        // One degree of freedom: 12.7 standard uncertainties of 0.75 min reach far below 0 (Student's t, 97.5 %: 12.706).
        ClassCurveQuantity half = findings.Class.Curve!.Find("halfLife")!;
        Assert.Equal(0, half.Interval.Low);
        Assert.True(half.Interval.High > 5);
    }

    private static ClassFindings Analyse(params string[] table) =>
        ClassAnalysis.Of(Marble.Practical, Marble.Read(table), AtomicWeights.Iupac2024, new AnalysisOptions(Causes: false, []));

    private static void AssertHolds(GroupCurve curve, string id, double truth, double within)
    {
        CurveQuantity found = curve.Find(id)!;
        Assert.InRange(truth, found.Interval!.Value.Low, found.Interval.Value.High);
        Assert.InRange(found.Value!.Value, truth - within, truth + within);
    }
}
