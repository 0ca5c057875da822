using Calx.Chemistry.Amounts;
using Calx.Engine.Tests.Practicals.Inference;
using Calx.Practicals.Definition;
using Calx.Practicals.Findings;
using Calx.Practicals.Readings;

namespace Calx.Engine.Tests.Practicals.Findings;

// Invented readings, worked by hand; residues 0.6308, 0.476 and 0.369 from the abridged atomic weights.
public class DeductionTests
{
    [Fact]
    public void Sixty_three_percent_left_means_the_carbonate_and_neither_the_hydroxide_nor_the_oxide()
    {
        ClassFindings found = Analyse(
            Given.Hydrogencarbonate, ("30.12", "33.10", "32.00"), ("29.50", "32.55", "31.42"), ("31.02", "34.00", "32.90"));

        Assert.Equal(["to-carbonate"], found.Class.Equations.Where(e => e.Fits).Select(e => e.Alternative.Id));
        Assert.Equal([0.6308, 0.4761, 0.3689], found.Class.Equations.Select(e => Math.Round(e.Expected, 4)));
        Assert.Contains(found.Class.Conclusion, s => s.Contains("to sodium carbonate (0.631) and not to", StringComparison.Ordinal));
    }

    [Fact]
    public void Half_left_fits_none_of_the_equations_and_it_is_said()
    {
        ClassFindings found = Analyse(
            Given.Hydrogencarbonate, ("30.00", "33.00", "31.65"), ("30.00", "33.00", "31.66"), ("30.00", "33.00", "31.64"));

        Assert.DoesNotContain(found.Class.Equations, e => e.Fits);
        Assert.Contains(found.Class.Conclusion, s => s.Contains("fits none of the equations", StringComparison.Ordinal));
    }

    [Fact]
    public void A_class_of_hydrates_singles_out_five_waters()
    {
        ClassFindings found = Analyse(
            Given.Hydrate, ("25.00", "27.50", "26.60"), ("24.10", "26.61", "25.70"), ("26.33", "28.80", "27.91"), ("25.71", "28.22", "27.32"));

        var ranked = Assert.IsType<FormulaRanking.Ranked>(found.Class.Formula);
        Assert.Equal([1, 5], ranked.Candidates[0].Numbers);
        Assert.True(ranked.Candidates[0].Probability > 0.9);
    }

    // 0.05 g of magnesium on a two-decimal balance: an uncertainty of a quarter of the ratio cannot tell 1:1 from 3:4 or 4:3.
    [Fact]
    public void Too_small_samples_leave_the_formula_open()
    {
        ClassFindings found = Analyse(Given.Magnesium, ("30.00", "30.05", "30.08"), ("28.10", "28.15", "28.18"));

        var ranked = Assert.IsType<FormulaRanking.Ranked>(found.Class.Formula);
        Assert.True(ranked.Likeliest().Count > 1 || ranked.NoneOfThese > 0.05);
        Assert.True(ranked.Candidates[0].Probability < 0.8);
    }

    [Fact]
    public void Without_both_masses_there_is_no_formula_and_the_reason_is_kept()
    {
        GroupReadings[] groups = [Given.Group("1", ("before", "30.24"), ("after", "30.40")), Given.Group("2", ("before", "31.24"), ("after", "31.40"))];

        ClassFindings found = ClassAnalysis.Of(Given.Magnesium, Given.Class(Given.Magnesium, groups), Given.Weights, Given.NoCauses);

        Assert.Contains("both masses", Assert.IsType<FormulaRanking.Undetermined>(found.Class.Formula).Reason, StringComparison.Ordinal);
    }

    private static ClassFindings Analyse(Practical practical, params (string Empty, string Before, string After)[] groups) =>
        ClassAnalysis.Of(
            practical,
            Given.Class(practical, [.. groups.Select((g, i) => Given.Group($"{i + 1}", ("empty", g.Empty), ("before", g.Before), ("after", g.After)))]),
            Given.Weights, Given.NoCauses);
}
