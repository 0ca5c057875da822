using Calx.Measurement.Expressions;
using Calx.Measurement.Numbers;
using Calx.Tests;
using CsCheck;

namespace Calx.Engine.Tests.Measurement.Expressions;

public class ExpressionParserTests
{
    // Expected values by hand, from the ordinary rules of precedence.
    [Theory]
    [InlineData("2 + 3 * 4", 14)]
    [InlineData("(2 + 3) * 4", 20)]
    [InlineData("10 - 4 - 3", 3)]
    [InlineData("24 / 4 / 2", 3)]
    [InlineData("2^3^2", 512)]
    [InlineData("-2^2", -4)]
    [InlineData("(-2)^2", 4)]
    [InlineData("2^-1", 0.5)]
    [InlineData("2^-2^0", 0.5)]
    [InlineData("3 - -2", 5)]
    [InlineData("--3", 3)]
    [InlineData("3 * -2", -6)]
    [InlineData("-3 * 2 + 1", -5)]
    [InlineData("1.5e3", 1500)]
    [InlineData("2E-2", 0.02)]
    [InlineData(".5 + 5.", 5.5)]
    [InlineData("6 × 2 · 2 ÷ 3 − 1", 7)]
    [InlineData("min(3, 1, 2) + max(4, 5)", 6)]
    [InlineData("sqrt(16) + abs(-2)", 6)]
    [InlineData("log10(1000) + ln(exp(2))", 5)]
    public void Reads_with_the_precedence_of_ordinary_mathematics(string text, double expected)
        => Assert.Equal(expected, Read(text).Evaluate(_ => double.NaN, _ => double.NaN), 12);

    [Fact]
    public void Names_and_molar_masses_are_listed_in_order_of_appearance()
    {
        Expression formula = Read("100 * (after - empty) / M(Mg(OH)2) + M( CuSO4·5H2O ) * after - M + α_1");
        Assert.Equal(["after", "empty", "M", "α_1"], formula.Names);
        Assert.Equal(["Mg(OH)2", "CuSO4·5H2O"], formula.MolarMasses);
    }

    [Fact]
    public void Each_part_knows_its_characters_brackets_included()
    {
        const string text = "2 * (a - b) / M(MgO)";
        var quotient = (BinaryOperation)Read(text);
        var product = (BinaryOperation)quotient.Left;
        Assert.Equal(text, TextOf(text, quotient));
        Assert.Equal("2 * (a - b)", TextOf(text, product));
        Assert.Equal("a - b", TextOf(text, product.Right));
        Assert.Equal("MgO", text.Substring(((MolarMassTerm)quotient.Right).FormulaSpan.Start, 3));
    }

    [Theory]
    [InlineData("", 0, 0, "the formula is empty")]
    [InlineData("  ", 0, 2, "the formula is empty")]
    [InlineData("1 +", 3, 0, "the formula ends where a number, name or bracket was expected")]
    [InlineData("a b", 2, 1, "an operator (+ - * / ^) is missing before 'b'; did you mean * b?")]
    [InlineData("2(a)", 1, 1, "an operator (+ - * / ^) is missing before '('; did you mean * (?")]
    [InlineData("3e + 1", 1, 1, "an operator (+ - * / ^) is missing before 'e'; did you mean * e?")]
    [InlineData("(a + b", 0, 1, "this '(' is never closed")]
    [InlineData("sqrt(a + (b)", 4, 1, "this '(' is never closed")]
    [InlineData("a + b)", 5, 1, "this ')' has no '(' before it")]
    [InlineData("1 + * 2", 4, 1, "a number, name or bracket was expected before '*'; a power is written with ^")]
    [InlineData("a ** 2", 3, 1, "a number, name or bracket was expected before '*'; a power is written with ^")]
    [InlineData("()", 1, 1, "a number, name or bracket was expected before ')'")]
    [InlineData("log(x)", 0, 3, "there is no function 'log'; did you mean log10 or ln?")]
    [InlineData("1 + sqr(x)", 4, 3, "there is no function 'sqr'; did you mean sqrt?")]
    [InlineData("Ln(x)", 0, 2, "there is no function 'Ln'; did you mean ln?")]
    [InlineData("mass(x)", 0, 4, "there is no function 'mass', only ln, log10, exp, sqrt, abs, min, max and M; a product is written with *")]
    [InlineData("ln + 1", 0, 2, "ln is a function and needs its argument in brackets; did you mean ln( )?")]
    [InlineData("ln(1, 2)", 0, 8, "ln takes one argument; 2 are given")]
    [InlineData("2 * min(1)", 4, 6, "min takes two arguments or more; 1 is given")]
    [InlineData("1,5 + 2", 1, 1, "a comma stands only between the arguments of min and max; decimals take a full stop")]
    [InlineData("x = 2", 2, 1, "a formula has no equals sign: write only what stands behind it")]
    [InlineData("x²", 1, 1, "raised digits are not understood; did you mean ^2?")]
    [InlineData("√x", 0, 1, "'√' is not understood; did you mean sqrt( )?")]
    [InlineData("5 % 2", 2, 1, "'%' is not understood; did you mean / 100?")]
    [InlineData("a ; b", 2, 1, "';' is not understood; an operator (+ - * / ^) was expected")]
    [InlineData("a 🔥 b", 2, 2, "'🔥' is not understood; an operator (+ - * / ^) was expected")]
    [InlineData("1 + 🔥", 4, 2, "a number, name or bracket was expected instead of '🔥'")]
    [InlineData("[a]", 0, 1, "only round brackets are understood, not '['; did you mean (?")]
    [InlineData("2 * 1e400", 4, 5, "the number is too large to compute with: the largest is about 1.8e308")]
    [InlineData("1e-400", 0, 6, "the number is too small to be told from 0: the smallest is about 5e-324")]
    [InlineData("2 * M()", 4, 3, "M( ) takes the formula of a substance, as in M(MgO)")]
    [InlineData("M(Mg(OH)2", 1, 1, "this '(' is never closed")]
    public void Says_what_is_wrong_and_at_which_character(string text, int start, int length, string sentence)
    {
        Parsed<Expression> parsed = Expression.Parse(text);
        Assert.False(parsed.Succeeded);
        Assert.Equal(sentence, parsed.Fault.ToString());
        Assert.Equal(new SourceSpan(start, length), parsed.Fault.Span);
    }

    [Fact]
    public void Hostile_length_and_depth_are_faults_not_crashes()
    {
        Assert.Equal(
            "the formula has 2001 characters; at most 2000 are read", Expression.Parse(new string('1', 2001)).Fault?.Reason);
        foreach (string opening in (string[])["(", "-", "2^", "abs(", "-("])
        {
            string text = string.Concat(Enumerable.Repeat(opening, 400));
            Assert.Equal(
                "the formula is nested too deeply; at most 100 levels are read", Expression.Parse(text).Fault?.Reason);
        }
    }

    [Fact]
    public void The_longest_chain_of_sums_is_read_evaluated_differentiated_and_printed()
    {
        string text = string.Join("+", Enumerable.Repeat("x", 1000));
        Expression chain = Read(text);
        Assert.Equal(1000, chain.Evaluate(_ => 1, _ => 1));
        Assert.Equal(1000, chain.Derivative("x").Evaluate(_ => 1, _ => 1));
        Assert.Equal(text, chain.ToString().Replace(" ", string.Empty, StringComparison.Ordinal));
    }

    [Fact]
    public void Any_text_is_read_or_told_what_is_wrong_within_its_bounds()
        => Gen.OneOf(Gen.String, Gen.Char["ab1.5eE+-*/^(),M √²= "].Array[0, 40].Select(text => new string(text))).Always(text =>
        {
            if (Expression.Parse(text).Fault is { } fault)
            {
                Assert.InRange(fault.Span.Start, 0, text.Length);
                Assert.InRange(fault.Span.End, fault.Span.Start, text.Length);
            }
        }, iter: 5000);

    internal static Expression Read(string text) => Expression.Parse(text).Value;

    private static string TextOf(string text, Expression part) => text.Substring(part.Span.Start, part.Span.Length);
}
