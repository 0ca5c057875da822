using Calx.Measurement.Expressions;
using Calx.Tests;
using CsCheck;
using static Calx.Engine.Tests.Measurement.Expressions.ExpressionParserTests;

namespace Calx.Engine.Tests.Measurement.Expressions;

public class DrawProgramTests
{
    [Fact]
    public void Blocks_agree_with_single_evaluation_to_the_last_bit_where_no_logarithm_or_exponential_stands()
        => Gen.Select(RandomExpressions.Any, Gen.Double[0.5, 2].Array[3].Array[1, 20]).Always((tree, draws) =>
        {
            if (!tree.Nodes.Any(IsTranscendental)
                && Array.TrueForAll(draws, draw => ExpressionTests.ValueOrNull(tree, draw) is not null))
            {
                double[] expected = Array.ConvertAll(draws, draw => ExpressionTests.ValueOrNull(tree, draw)!.Value);
                Assert.Equal(expected, Run(tree, draws));
            }
        }, iter: 2000);

    [Fact]
    public void Blocks_agree_with_single_evaluation_to_11_digits_for_smooth_formulas()
        => Gen.Select(RandomExpressions.Tame, Gen.Double[0.5, 2].Array[3].Array[1, 20]).Always((tree, draws) =>
        {
            double[] values = Run(tree, draws);
            for (int i = 0; i < values.Length; i++)
            {
                double expected = ExpressionTests.ValueOrNull(tree, draws[i])!.Value;
                Assert.Equal(expected, values[i], 1e-11 * (1 + Math.Abs(expected)));
            }
        }, iter: 500);

    [Fact]
    public void Logarithms_and_exponentials_agree_to_13_digits_over_their_range()
    {
        double[] numbers = [.. Enumerable.Range(0, 2001).Select(i => Math.Pow(10, (i - 1000) / 3.3))];
        double[] powers = [.. Enumerable.Range(0, 2001).Select(i => (i - 1000) * 0.7)];
        Check("ln(x)", numbers, Math.Log);
        Check("log10(x)", numbers, Math.Log10);
        Check("exp(x)", powers, Math.Exp);

        static void Check(string formula, double[] draws, Func<double, double> function)
        {
            double[] values = new double[draws.Length];
            DrawProgram.Compile(Read(formula), ["x"]).Evaluate([draws], draws.Length, values);
            Assert.All(
                draws.Zip(values),
                pair => Assert.Equal(function(pair.First), pair.Second, (1e-13 * Math.Abs(pair.Second)) + 1e-300));
        }
    }

    [Fact]
    public void The_value_of_a_draw_does_not_depend_on_where_it_stands()
    {
        DrawProgram program = DrawProgram.Compile(Read("exp(ln(x) * 0.37) / (1 + sqrt(x)) + log10(x)"), ["x"]);
        double[] draws = [.. Enumerable.Range(1, 1500).Select(i => i * 0.013)];
        double[] whole = new double[draws.Length];
        program.Evaluate([draws], draws.Length, whole);
        for (int place = 0; place < draws.Length; place += 7)
        {
            double[] alone = new double[1];
            program.Evaluate([draws[place..]], 1, alone);
            Assert.Equal(whole[place], alone[0]);
        }
    }

    [Fact]
    public void Equal_parts_are_computed_once_and_numbers_are_folded()
    {
        // after - empty, before - empty, 2 * 3 + M(MgO), a quotient and a product: four operations are left.
        DrawProgram program = DrawProgram.Compile(
            Read("(after - empty) / (before - empty) * (2 * 3 + M(MgO))"), ["empty", "before", "after"], _ => 40);
        Assert.Equal(4, program.Operations);
        Assert.Equal(3, DrawProgram.Compile(Read("ln(a * b) + ln(b * a)"), ["a", "b"]).Operations);
        Assert.Equal(0, DrawProgram.Compile(Read("2^3"), []).Operations);
    }

    [Fact]
    public void Numbers_before_a_draw_among_the_arguments_of_min_and_max_count()
    {
        double[] values = new double[3];
        DrawProgram.Compile(Read("min(4, 2, x) + 10 * max(1, 2, x)"), ["x"]).Evaluate([[1, 2, 3]], 3, values);
        Assert.Equal([21.0, 22.0, 32.0], values);
    }

    [Theory]
    [InlineData("(x + 1)^0", 1)]
    [InlineData("(x + 1)^((x * 2)^0)", 4)]
    [InlineData("x", 3)]
    [InlineData("(1 / x)^0 * x", 3)]
    public void A_formula_whose_last_step_is_none_has_its_value(string formula, double expected)
    {
        double[] values = new double[2];
        DrawProgram.Compile(Read(formula), ["x"]).Evaluate([[3, 3]], 2, values);
        Assert.Equal([expected, expected], values);
    }

    [Fact]
    public void A_fault_that_a_later_operation_hides_is_still_told()
    {
        // 1 / (1 / x) is 0 in floating point where x is 0, and min() drops an infinity.
        double[] draws = [1, 2, 0, 3, 4, 5, 6, 7, 8];
        foreach (string formula in (string[])["1 / (1 / x)", "min(1, 1 / x)", "max(1, ln(x))", "(1 / x)^0"])
        {
            DrawProgram program = DrawProgram.Compile(Read(formula), ["x"]);
            Assert.Throws<Calx.Measurement.Uncertainty.UndefinedResultException>(
                () => program.Evaluate([draws], draws.Length, new double[draws.Length]));
        }
    }

    [Fact]
    public void Draws_that_are_not_numbers_are_refused()
        => Assert.Throws<Calx.Measurement.Uncertainty.UndefinedResultException>(
            () => DrawProgram.Compile(Read("x"), ["x"]).Evaluate([[1, double.NaN]], 2, new double[2]));

    [Fact]
    public void Missing_inputs_columns_and_room_are_refused()
    {
        Assert.Throws<ArgumentException>(() => DrawProgram.Compile(Read("a + b"), ["a"]));
        Assert.Throws<ArgumentException>(() => DrawProgram.Compile(Read("M(MgO)"), []));
        DrawProgram program = DrawProgram.Compile(Read("a + b"), ["a", "b"]);
        Assert.Throws<ArgumentException>(() => program.Evaluate([[1.0]], 1, new double[1]));
        Assert.Throws<ArgumentOutOfRangeException>(() => program.Evaluate([[1.0], [1.0]], 2, new double[2]));
        Assert.Throws<ArgumentOutOfRangeException>(() => program.Evaluate([[1.0], [1.0]], 1, []));
    }

    private static double[] Run(Expression tree, double[][] draws)
    {
        double[][] columns = [.. RandomExpressions.Names.Select((_, i) => Array.ConvertAll(draws, draw => draw[i]))];
        double[] values = new double[draws.Length];
        DrawProgram.Compile(tree, RandomExpressions.Names, RandomExpressions.MolarMass).Evaluate(columns, draws.Length, values);
        return values;
    }

    private static bool IsTranscendental(Expression node)
        => node is FunctionCall { Function: Function.Ln or Function.Log10 or Function.Exp };
}
