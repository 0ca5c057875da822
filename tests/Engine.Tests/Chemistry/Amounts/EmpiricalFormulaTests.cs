using Calx.Chemistry.Amounts;
using Calx.Measurement.Numbers;
using Calx.Measurement.Uncertainty;
using Calx.Measurement.Weighing;
using Calx.Tests;
using CsCheck;

namespace Calx.Engine.Tests.Chemistry.Amounts;

public class EmpiricalFormulaTests
{
    // Whole-compound percentages as textbooks print them (from memory), each good to 0.05.
    [Theory]
    [InlineData("Mg3N2", "Mg 24.305 72.24", "N 14.007 27.76")]
    [InlineData("Fe2O3", "Fe 55.845 69.94", "O 15.999 30.06")]
    [InlineData("Fe3O4", "Fe 55.845 72.36", "O 15.999 27.64")]
    [InlineData("P2O5", "P 30.974 43.64", "O 15.999 56.36")]
    [InlineData("CH2O", "C 12.011 40.00", "H 1.008 6.71", "O 15.999 53.29")] // glucose
    [InlineData("C3H4O3", "C 12.011 40.92", "H 1.008 4.58", "O 15.999 54.50")] // ascorbic acid
    [InlineData("C4H5N2O", "C 12.011 49.48", "H 1.008 5.19", "N 14.007 28.85", "O 15.999 16.48")] // caffeine
    [InlineData("Na2CO3", "Na 22.990 43.38", "C 12.011 11.33", "O 15.999 45.29")]
    [InlineData("K2Cr2O7", "K 39.098 26.58", "Cr 51.996 35.35", "O 15.999 38.07")]
    public void Percentages_of_a_textbook_lead_to_its_formula(string formula, params string[] elements)
    {
        WeighedPart[] parts = [.. elements.Select(text => text.Split(' ')).Select(cells => Part(
            cells[0], Number(cells[1]), UncertainValue.Of($"share of {cells[0]}", Number(cells[2]), 0.05)))];
        var ranked = Ranked(EmpiricalFormula.Candidates(parts, new FormulaPrior(largestNumber: 8)));
        Assert.Equal(formula, ranked.Candidates[0].Formula);
        Assert.True(ranked.Candidates[0].Probability > 0.9);
    }

    [Fact]
    public void A_burnt_ribbon_weighed_to_centigrams_points_to_MgO_but_shared_readings_count()
    {
        // Readings 30.00, 30.24, 30.38 g, relative atomic masses 24.3 and 16.0: Mg:O is 1.129 (worked by hand).
        var ranked = Ranked(EmpiricalFormula.Candidates(Ribbon(0.01, 30.00m, 30.24m, 30.38m)));
        Assert.Equal("MgO", ranked.Candidates[0].Formula);
        // Distance by hand: y = 0.14/16.0 - 0.24/24.3 = -0.00112654 mol; the reading before counts in both masses, so
        // u(y) = 0.00757188 sqrt(1/16² + (1/16 + 1/24.3)² + 1/24.3²) = 0.00096799; (y/u)² = 1.3544.
        Assert.Equal(1.3544, ranked.Candidates[0].ChiSquared, 3);
    }

    [Fact]
    public void Weak_masses_leave_many_formulas_open()
    {
        var ranked = Ranked(EmpiricalFormula.Candidates(Ribbon(0.1, 30.0m, 30.2m, 30.4m)));
        Assert.True(ranked.Candidates[0].Probability < 0.8);
        Assert.True(ranked.Likeliest().Count >= 4);
    }

    [Fact]
    public void Masses_of_an_unfinished_reaction_fit_none_of_the_formulas()
    {
        // 2.430 g of Mg that gained 1.000 g of O, each to 1 mg: Mg:O 1.6, known to 0.1 %, and no ratio up to 4 is near.
        var ranked = Ranked(EmpiricalFormula.Candidates(
            [Part("Mg", 24.3, UncertainValue.Of("m", 2.430, 0.001)), Part("O", 16.0, UncertainValue.Of("o", 1.000, 0.001))],
            new FormulaPrior(largestNumber: 4)));
        Assert.True(ranked.NoneOfThese > 0.999);
        Assert.Equal("Mg3O2", ranked.Candidates.MinBy(found => found.ChiSquared)!.Formula);
    }

    [Fact]
    public void Probabilities_add_up_to_one_and_do_not_depend_on_the_unit_or_the_order() =>
        Gen.Select(Gen.Double[0.05, 3], Gen.Double[0.05, 3], Gen.Double[0.05, 3], Gen.Double[0.005, 0.3], Gen.Double[0.001, 1000])
            .Always(
                (a, b, c, relative, scale) =>
                {
                    double[] masses = [a, b, c];
                    var plain = Ranked(EmpiricalFormula.Candidates(Three(masses, relative, 1)));
                    var scaled = Ranked(EmpiricalFormula.Candidates(Three(masses, relative, scale)));
                    var turned = Ranked(EmpiricalFormula.Candidates([.. Three(masses, relative, 1).Reverse()]));
                    Assert.Equal(1, plain.NoneOfThese + plain.Candidates.Sum(found => found.Probability), 12);
                    Assert.Equal(plain.Candidates[0].Probability, scaled.Candidates[0].Probability, 1e-9);
                    Assert.Equal(plain.NoneOfThese, scaled.NoneOfThese, 1e-9);
                    // 'None of these' is a mean over evenly spread draws: two digits when the axes are exchanged.
                    Assert.Equal(plain.NoneOfThese, turned.NoneOfThese, 1e-2);
                    Assert.Equal(plain.Candidates[0].Probability, turned.Candidates[0].Probability, 1e-2);
                },
                iter: 25);

    [Fact]
    public void Likelihood_ratios_do_not_depend_on_the_prior()
    {
        WeighedPart[] parts = Ribbon(0.01, 30.00m, 30.24m, 30.38m);
        var usual = Ranked(EmpiricalFormula.Candidates(parts));
        var flat = Ranked(EmpiricalFormula.Candidates(parts, new FormulaPrior(simplicity: 0, noneOfThese: 0.5)));
        foreach (FormulaCandidate found in usual.Candidates)
        {
            Assert.Equal(
                found.LikelihoodRatio, flat.Candidates.Single(other => other.Formula == found.Formula).LikelihoodRatio, 12);
        }

        Assert.Equal(1, usual.Candidates.Max(found => found.LikelihoodRatio));
        Assert.Equal(0.5, flat.Candidates.Sum(found => found.PriorProbability), 12);
    }

    [Theory]
    [InlineData(0.0, "no mass of O was found, so no formula with O follows")]
    [InlineData(-0.02, "the mass of O comes out negative (-0.02 g); check the readings it is found from")]
    public void A_mass_that_is_not_positive_gives_no_formula(double mass, string reason) => Assert.Equal(
        new FormulaRanking.Undetermined(reason),
        EmpiricalFormula.Candidates(
            [Part("Mg", 24.3, UncertainValue.Of("m", 0.24, 0.01)), Part("O", 16.0, UncertainValue.Of("o", mass, 0.01))]));

    [Fact]
    public void Masses_without_uncertainty_give_no_probabilities() => Assert.IsType<FormulaRanking.Undetermined>(
        EmpiricalFormula.Candidates([Part("Mg", 24.3, UncertainValue.Exact(0.24)), Part("O", 16.0, UncertainValue.Exact(0.16))]));

    [Fact]
    public void One_exact_mass_and_one_uncertain_mass_suffice() => Assert.Equal("MgO", Ranked(EmpiricalFormula.Candidates(
        [Part("Mg", 24.3, UncertainValue.Exact(0.243)), Part("O", 16.0, UncertainValue.Of("o", 0.160, 0.001))])).Candidates[0].Formula);

    [Fact]
    public void Too_few_elements_or_one_twice_or_too_many_formulas_is_said()
    {
        WeighedPart magnesium = Part("Mg", 24.3, UncertainValue.Of("m", 0.24, 0.01));
        Assert.IsType<FormulaRanking.Undetermined>(EmpiricalFormula.Candidates([magnesium]));
        Assert.Equal(
            new FormulaRanking.Undetermined("Mg is given more than once"),
            EmpiricalFormula.Candidates([magnesium, magnesium]));
        WeighedPart[] six = [.. "ABCDEF".Select(letter => Part($"{letter}", 10, UncertainValue.Of("m", 1, 0.1)))];
        Assert.IsType<FormulaRanking.Undetermined>(EmpiricalFormula.Candidates(six, new FormulaPrior(largestNumber: 11)));
    }

    private static WeighedPart[] Three(double[] masses, double relative, double scale) =>
        [.. masses.Select((mass, i) => Part(
            "ABC"[i..(i + 1)], 10 * (i + 1), UncertainValue.Of("m", mass * scale, mass * relative * scale)))];

    private static WeighedPart[] Ribbon(double resolution, decimal empty, decimal before, decimal after)
    {
        var series = new ReadingSeries(new Balance(resolution));
        UncertainValue shared = series.Mass("before", new WrittenNumber(before));
        return
        [
            Part("Mg", 24.3, shared - series.Mass("empty", new WrittenNumber(empty))),
            Part("O", 16.0, series.Mass("after", new WrittenNumber(after)) - shared),
        ];
    }

    private static WeighedPart Part(string symbol, double molarMass, UncertainValue mass) =>
        new(symbol, UncertainValue.Exact(molarMass), mass);

    private static FormulaRanking.Ranked Ranked(FormulaRanking ranking) => Assert.IsType<FormulaRanking.Ranked>(ranking);

    private static double Number(string text) => double.Parse(text, System.Globalization.CultureInfo.InvariantCulture);
}
