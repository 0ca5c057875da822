using System.Globalization;
using Calx.Measurement.Statistics;
using Calx.Tests;
using CsCheck;

namespace Calx.Engine.Tests.Measurement.Statistics;

public class RobustTests
{
    /// <summary>
    /// Copper in flour and nickel in rock: Venables and Ripley, Modern Applied Statistics with S, and the output kept
    /// with MASS (which stops at six digits).
    /// </summary>
    [Theory]
    [InlineData("chem", 1.5, 3.205498, 0.673652)]
    [InlineData("abbey", 1.5, 11.7315, 5.2585)]
    [InlineData("abbey", 2, 12.351, 6.1052)]
    [InlineData("abbey", 1, 11.365, 5.5673)]
    public void Huber_estimates_of_the_textbook_data_are_met(string dataset, double limit, double centre, double scale)
    {
        var found = Assert.IsType<RobustResult.Estimated>(Robust.HuberProposal2(RobustData.Of(dataset), limit));
        Agree.Relative(5e-5, centre, found.Centre);
        Agree.Relative(2e-5, scale, found.Scale);
    }

    /// <summary>Converged to 14 digits elsewhere: tests/reference/robust_results.csv, columns computed.</summary>
    [Fact]
    public void Both_methods_converge_to_the_values_computed_elsewhere()
    {
        ReferenceRow[] rows = [.. ReferenceTable.Read("robust_results.csv").Rows
            .Where(row => row.Has("k") && row.Has("computed_sd"))];
        Assert.Equal(8, rows.Length);
        foreach (ReferenceRow row in rows)
        {
            double[] values = RobustData.Of(row.Text("dataset"));
            RobustResult result = row.Text("method") == "algorithmA"
                ? Robust.AlgorithmA(values)
                : Robust.HuberProposal2(values, row.Number("k"));
            var found = Assert.IsType<RobustResult.Estimated>(result);
            Agree.Within(6e-7, row.Number("computed_mean"), found.Centre);
            Agree.Within(6e-7, row.Number("computed_sd"), found.Scale);
        }
    }

    [Fact]
    public void Creosote_gives_the_robust_mean_of_the_standard()
    {
        // ISO 5725-5:1998, creosote: x* 20.412 (from memory); its s* 1.091 is a value before convergence.
        RobustResult found = Robust.AlgorithmA(RobustData.Of("creosote_means"));
        Agree.Within(0.0005, 20.412, found.Centre);
    }

    /// <summary>MASS::hubers, and its equations solved to the end: tests/reference/scripts/robust.R.</summary>
    [Fact]
    public void Huber_estimates_agree_with_another_program_on_drawn_data()
    {
        foreach (ReferenceRow row in ReferenceTable.Read("computed/hubers.csv").Rows)
        {
            double[] values = [.. row.Text("values").Split(' ').Select(x => double.Parse(x, CultureInfo.InvariantCulture))];
            var found = Assert.IsType<RobustResult.Estimated>(Robust.HuberProposal2(values, row.Number("k")));
            // The other program stops after 30 steps, which may leave the fourth digit open.
            Agree.Relative(1e-3, row.Number("hubers_scale"), found.Scale);
            Agree.Relative(1e-11, row.Number("centre"), found.Centre);
            Agree.Relative(1e-10, row.Number("scale"), found.Scale);
        }
    }

    [Fact]
    public void One_wild_value_moves_the_estimate_no_further_however_wild_it_is()
    {
        double[] near = [1.61, 1.65, 1.66, 1.67, 1.70, 5];
        double[] far = [1.61, 1.65, 1.66, 1.67, 1.70, 5e6];
        Assert.Equal(Robust.AlgorithmA(near).Centre, Robust.AlgorithmA(far).Centre, 10);
    }

    [Fact]
    public void Mostly_equal_readings_have_a_centre_but_no_scale()
    {
        Assert.Equal(2, Assert.IsType<RobustResult.NoScale>(Robust.AlgorithmA([2, 2, 2, 2, 2, 2, 2, 9])).Centre);
        Assert.IsType<RobustResult.NoScale>(Robust.HuberProposal2([3, 3, 3]));
    }

    [Fact]
    public void Shifting_scaling_and_reordering_the_values_does_the_same_to_the_estimate() =>
        Gen.Select(Gen.Int[0, 40].Select(x => x / 100.0).Array[4, 25], Gen.Double[-20, 20], Gen.Double[0.1, 10]).Always((values, shift, scale) =>
        {
            RobustResult plain = Robust.AlgorithmA(values);
            double[] moved = [.. values.Reverse().Select(x => shift + (scale * x))];
            RobustResult changed = Robust.AlgorithmA(moved);
            if (plain is RobustResult.Estimated before && changed is RobustResult.Estimated after)
            {
                Agree.Within(1e-8 * scale, shift + (scale * before.Centre), after.Centre);
                Agree.Within(1e-8 * scale, scale * before.Scale, after.Scale);
            }
            else
            {
                Agree.Within(1e-8 * scale, shift + (scale * plain.Centre), changed.Centre);
            }
        }, iter: 200);

    [Fact]
    public void Modified_scores_count_from_the_median_in_robust_standard_deviations()
    {
        // By hand: median 3, distances 2 1 0 1 97, MAD 1, scores 0.6745 times the distances.
        ModifiedScores found = ModifiedScores.Of([1, 2, 3, 4, 100], 0.01);
        Assert.Equal(0.6745 * 97, found.Scores[4], 12);
        Assert.Equal(-0.6745 * 2, found.Scores[0], 12);
        Assert.True(found.IsFarOut(4));
        Assert.False(found.IsFarOut(0));
        Assert.False(found.ScaleIsFloor);
    }

    [Fact]
    public void The_floor_keeps_one_division_among_equal_readings_from_being_far_out()
    {
        ModifiedScores found = ModifiedScores.Of([1.66, 1.66, 1.66, 1.66, 1.67], 0.01);
        Assert.True(found.ScaleIsFloor);
        Assert.Equal(1, found.Scores[4], 10);
        Assert.False(found.IsFarOut(4));
        Assert.Throws<ArgumentOutOfRangeException>(() => ModifiedScores.Of([1], 0));
    }
}
