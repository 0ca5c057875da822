using Calx.Chemistry.Amounts;
using Calx.Measurement.Uncertainty;

namespace Calx.Engine.Tests.Chemistry.Amounts;

/// <summary>
/// The slow and obvious way for two elements: the density of the two masses integrated over the compound's total mass by
/// Simpson's rule, and for 'none of these' over the mass fraction as well.
/// </summary>
public class FormulaJudgeTests
{
    private const double FirstMolarMass = 24.3;
    private const double SecondMolarMass = 16.0;

    [Theory]
    [InlineData(0.24, 0.01, 0.14, 0.012, -0.5)]
    [InlineData(0.24, 0.002, 0.16, 0.002, 0.3)]
    [InlineData(0.10, 0.04, 0.05, 0.03, -0.7)]
    [InlineData(2.0, 0.3, 3.1, 0.5, 0)]
    public void Ranking_agrees_with_slow_integration(double first, double u1, double second, double u2, double correlation)
    {
        var prior = new FormulaPrior(largestNumber: 4, simplicity: 1, noneOfThese: 0.2);
        IReadOnlyList<UncertainValue> masses = UncertainValue.Correlated(
            [new UncertainInput("first", first, u1), new UncertainInput("second", second, u2)],
            new[,] { { 1, correlation }, { correlation, 1 } });
        var ranked = Assert.IsType<FormulaRanking.Ranked>(EmpiricalFormula.Candidates(
            [
                new WeighedPart("A", UncertainValue.Exact(FirstMolarMass), masses[0]),
                new WeighedPart("B", UncertainValue.Exact(SecondMolarMass), masses[1]),
            ],
            prior));

        var judge = new Judge(first, u1, second, u2, correlation);
        double[] joint = [.. ranked.Candidates.Select(found => found.PriorProbability * judge.GivenFraction(Fraction(found)))];
        double none = 0.2 * judge.AnyFraction();
        double evidence = joint.Sum() + none;
        for (int i = 0; i < joint.Length; i++)
        {
            Assert.Equal(joint[i] / joint[0], ranked.Candidates[i].Probability / ranked.Candidates[0].Probability, 1e-7);
        }

        Assert.Equal(none / evidence, ranked.NoneOfThese, 2e-3 * ranked.NoneOfThese);
    }

    private static double Fraction(FormulaCandidate found)
    {
        double first = found.Numbers[0] * FirstMolarMass;
        return first / (first + (found.Numbers[1] * SecondMolarMass));
    }

    private sealed class Judge(double first, double u1, double second, double u2, double correlation)
    {
        private readonly double longest = first + second + (12 * (u1 + u2));

        public double GivenFraction(double fraction) =>
            Simpson(total => Density(fraction * total, (1 - fraction) * total), longest, 1200);

        public double AnyFraction() => Simpson(GivenFraction, 1, 400);

        private double Density(double trueFirst, double trueSecond)
        {
            double a = (first - trueFirst) / u1;
            double b = (second - trueSecond) / u2;
            double rest = 1 - (correlation * correlation);
            double exponent = ((a * a) - (2 * correlation * a * b) + (b * b)) / (2 * rest);
            return Math.Exp(-exponent) / (2 * Math.PI * u1 * u2 * Math.Sqrt(rest));
        }

        private static double Simpson(Func<double, double> function, double end, int panels)
        {
            double step = end / panels;
            double inner = Enumerable.Range(1, panels - 1).Sum(i => (i % 2 == 0 ? 2 : 4) * function(i * step));
            return step / 3 * (function(0) + inner + function(end));
        }
    }
}
