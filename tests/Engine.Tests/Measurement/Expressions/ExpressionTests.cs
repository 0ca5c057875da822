using Calx.Measurement.Expressions;
using Calx.Measurement.Uncertainty;
using Calx.Tests;
using CsCheck;
using static Calx.Engine.Tests.Measurement.Expressions.ExpressionParserTests;

namespace Calx.Engine.Tests.Measurement.Expressions;

public class ExpressionTests
{
    [Theory]
    [InlineData("a+b*c-(d-e)", "a + b * c - (d - e)")]
    [InlineData("((a))*(b+c)", "a * (b + c)")]
    [InlineData("(a*b)*c/(d*e)", "a * b * c / (d * e)")]
    [InlineData("(-a)^2 - (-(b^2))", "(-a)^2 - -b^2")]
    [InlineData("(a^b)^c + a^(b^c)", "(a^b)^c + a^b^c")]
    [InlineData("-(a+b) + (-a)*b", "-(a + b) + -a * b")]
    [InlineData("MAX(1)", null)]
    [InlineData("max(1,a+(b))", "max(1, a + b)")]
    [InlineData("1E3*2.50 / M( MgO )", "1000 * 2.5 / M(MgO)")]
    public void Prints_no_more_brackets_than_needed(string text, string? printed)
        => Assert.Equal(printed, Expression.Parse(text) is { Succeeded: true } parsed ? parsed.Value.ToString() : null);

    [Fact]
    public void What_is_printed_reads_back_to_an_equal_tree()
        => RandomExpressions.Any.Always(tree =>
        {
            string printed = tree.ToString();
            Assert.True(printed.Length > 2000 || tree.Equals(Read(printed)), printed);
        }, iter: 2000);

    [Fact]
    public void Equality_looks_at_the_tree_and_not_at_where_it_stood()
    {
        Assert.Equal(Read("a + b"), Read("  (a)+b "));
        Assert.Equal(Read("a + b").GetHashCode(), Read("  (a)+b ").GetHashCode());
        Assert.NotEqual(Read("a + b"), Read("b + a"));
        Assert.NotEqual(Read("a - b"), Read("a + b"));
        Assert.NotEqual(Read("min(a, b)"), Read("min(a, b, b)"));
    }

    // Derivatives from the rules of any calculus text, simplified by hand.
    [Theory]
    [InlineData("3 * x + y", "3")]
    [InlineData("x^2", "2 * x")]
    [InlineData("5 - x", "-1")]
    [InlineData("y / x", "-(y / x^2)")]
    [InlineData("x / 4", "1 / 4")]
    [InlineData("ln(x)", "1 / x")]
    [InlineData("exp(2 * x)", "exp(2 * x) * 2")]
    [InlineData("sqrt(x)", "1 / (2 * sqrt(x))")]
    [InlineData("abs(x)", "x / abs(x)")]
    [InlineData("y^2 + M(MgO)", "0")]
    public void Derivative_by_x_is_simplified(string text, string derivative)
        => Assert.Equal(Read(derivative).Simplified(), Read(text).Derivative("x"));

    [Fact]
    public void Derivative_agrees_with_the_central_difference()
        => Gen.Select(RandomExpressions.Tame, Gen.Double[0.5, 2].Array[3]).Always((tree, point) =>
        {
            const double step = 1e-5;
            foreach (string name in RandomExpressions.Names)
            {
                double symbolic = tree.Derivative(name).Evaluate(At(point), RandomExpressions.MolarMass);
                double difference = (ValueNear(tree, point, name, step) - ValueNear(tree, point, name, -step)) / (2 * step);
                double size = 1 + Math.Abs(symbolic) + Math.Abs(ValueNear(tree, point, name, 0));
                Assert.Equal(difference, symbolic, 1e-5 * size);
            }
        });

    [Fact]
    public void Simplified_smooth_formula_keeps_its_value_to_12_digits()
        => Gen.Select(RandomExpressions.Tame, Gen.Double[0.5, 2].Array[3]).Always((tree, point) =>
        {
            double value = tree.Evaluate(At(point), RandomExpressions.MolarMass);
            double simplified = tree.Simplified().Evaluate(At(point), RandomExpressions.MolarMass);
            Assert.Equal(value, simplified, 1e-12 * (1 + Math.Abs(value)));
        });

    [Fact]
    public void Substitute_puts_a_formula_in_place_of_each_occurrence_of_a_name()
        => Assert.Equal(
            Read("(p - q)^2 / (p - q) + M(x)"), Read("x^2 / x + M(x)").Substitute("x", Read("p - q")));

    [Fact]
    public void Replace_changes_one_place_and_leaves_its_twin_alone()
    {
        var sum = (BinaryOperation)Read("(a - b) * (a - b)");
        Assert.Equal(Read("(a - b) * (b - a)"), sum.Replace(sum.Right, Read("b - a")));
    }

    [Fact]
    public void Rewrite_reaches_every_node()
    {
        Expression swapped = Read("a - b / (c - ln(d - e))").Rewrite(node =>
            node is BinaryOperation { Operator: Operator.Subtract } difference
                ? new BinaryOperation(Operator.Subtract, difference.Right, difference.Left)
                : node);
        Assert.Equal(Read("b / (ln(e - d) - c) - a"), swapped);
    }

    [Theory]
    [InlineData("2 + 1 / (a - a)", "/", "division by zero, in '1 / (a - a)'", 4, 11)]
    [InlineData("sqrt(0 - a)", "sqrt", "sqrt of -3 has no value: square roots take numbers of at least 0, in 'sqrt(0 - a)'", 0, 11)]
    [InlineData("ln(a - 3)", "ln", "ln of 0 has no value: logarithms take numbers above 0, in 'ln(a - 3)'", 0, 9)]
    [InlineData("log10(-a)", "log10", "log10 of -3 has no value: logarithms take numbers above 0, in 'log10(-a)'", 0, 9)]
    [InlineData("(a - 3)^-1", "^", "0 cannot be raised to the negative power -1, in '(a - 3)^-1'", 0, 10)]
    [InlineData("(-a)^0.5", "^", "the negative number -3 cannot be raised to the power 0.5, in '(-a)^0.5'", 0, 8)]
    [InlineData("exp(a * 1000)", "exp", "the result of exp is too large to compute with, in 'exp(a * 1000)'", 0, 13)]
    [InlineData("1e200 * 1e200", "*", "the result of * is too large to compute with, in '1E+200 * 1E+200'", 0, 13)]
    public void A_part_without_a_value_is_named_with_its_place(
        string text, string operation, string message, int start, int length)
    {
        Expression formula = Read(text);
        var faults = new List<UndefinedResultException>
        {
            Assert.Throws<UndefinedResultException>(() => formula.Evaluate(_ => 3, _ => 1)),
            Assert.Throws<UndefinedResultException>(() => formula.Evaluate(
                _ => UncertainValue.Of("a", 3, 0.1), _ => UncertainValue.Exact(1))),
            Assert.Throws<UndefinedResultException>(() => DrawProgram.Compile(formula, ["a"]).Evaluate(
                [[.. Enumerable.Repeat(3.0, 7)]], 7, new double[7])),
        };
        Assert.All(faults, fault =>
        {
            Assert.Equal(operation, fault.Operation);
            Assert.Equal(message, fault.Message);
            Assert.Equal((start, length), (fault.Span?.Start, fault.Span?.Length));
        });
    }

    internal static Func<string, double> At(double[] point) => name => point[Array.IndexOf(RandomExpressions.Names, name)];

    internal static double? ValueOrNull(Expression tree, double[] point)
    {
        try
        {
            return tree.Evaluate(At(point), RandomExpressions.MolarMass);
        }
        catch (UndefinedResultException)
        {
            return null;
        }
    }

    private static double ValueNear(Expression tree, double[] point, string name, double step)
        => tree.Evaluate(other => At(point)(other) + (other == name ? step : 0), RandomExpressions.MolarMass);
}
