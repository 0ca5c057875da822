using Calx.Chemistry.Amounts;
using Calx.Measurement.Uncertainty;
using Calx.Practicals.Findings;
using Calx.Practicals.Texts;

namespace Calx.Engine.Tests.Practicals.Findings;

/// <summary>What is said of the formulas that masses allow.</summary>
public sealed class FormulaWordsTests
{
    [Theory]
    [InlineData(0.97, 0.02, 0.01, "The masses single out MgO (probability 97 %).")]
    [InlineData(0.90, 0.06, 0.04, "The masses favour MgO (90 %) but leave open Mg3O2 (6 %).")]
    [InlineData(0.60, 0.25, 0.15, "The masses do not decide between MgO (60 %), Mg3O2 (25 %), none of these (15 %).")]
    [InlineData(0.30, 0.10, 0.60, "The masses fit no formula considered well; the nearest is Mg3O2.")]
    public void The_sentence_says_what_stays_open(double best, double next, double none, string sentence) => Assert.Equal(
        sentence,
        FormulaWords.Of(
            new FormulaRanking.Ranked(
                [new FormulaCandidate("MgO", [1, 1], best, 0.5, 1, 9), new FormulaCandidate("Mg3O2", [3, 2], next, 0.4, 0.5, 4)],
                none),
            EngineLanguage.British));

    /// <summary>2.430 g of Mg that gained 1.000 g of O, each to 1 mg: Mg:O 1.6, known to 0.1 %, and no ratio up to 4 is near.</summary>
    [Fact]
    public void Masses_of_an_unfinished_reaction_fit_no_formula()
    {
        WeighedPart[] parts =
        [
            new WeighedPart("Mg", UncertainValue.Exact(24.3), UncertainValue.Of("m", 2.430, 0.001)),
            new WeighedPart("O", UncertainValue.Exact(16.0), UncertainValue.Of("o", 1.000, 0.001)),
        ];
        var ranked = Assert.IsType<FormulaRanking.Ranked>(EmpiricalFormula.Candidates(parts, new FormulaPrior(largestNumber: 4)));
        Assert.Equal("The masses fit no formula considered well; the nearest is Mg3O2.", FormulaWords.Of(ranked, EngineLanguage.British));
    }

    [Fact]
    public void More_than_four_answers_are_counted_and_not_named()
    {
        FormulaCandidate[] five = [.. Enumerable.Range(1, 6).Select(n => new FormulaCandidate($"Mg{n}O", [n, 1], 0.16, 0.1, 1, n))];
        Assert.Equal(
            "The masses do not decide between Mg1O (16 %), Mg2O (16 %), Mg3O (16 %), Mg4O (16 %) and 2 more.",
            FormulaWords.Of(new FormulaRanking.Ranked(five, 0.04), EngineLanguage.British));
    }
}
