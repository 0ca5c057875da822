using Calx.Chemistry.Elements;
using Calx.Chemistry.Formulas;
using Calx.Measurement.Numbers;
using Calx.Tests;
using CsCheck;

namespace Calx.Engine.Tests.Chemistry.Formulas;

public sealed class FormulaPropertyTests
{
    private static readonly Gen<string> Unit = Gen.Select(
        Gen.OneOf("H", "O", "Mg", "Cu", "Co", "C", "N", "S", "D", "Fe", "Og"),
        Gen.Int[1, 20],
        (symbol, count) => count == 1 ? symbol : symbol + count);

    private static readonly Gen<string> Group = Gen.Select(
        Unit.Array[1, 4],
        Gen.OneOf("()", "[]", "{}"),
        Gen.Int[2, 9],
        (units, pair, count) => $"{pair[0]}{string.Concat(units)}{pair[1]}{count}");

    private static readonly Gen<string> Body =
        Gen.OneOf(Unit, Group).Array[1, 6].Select(units => string.Concat(units));

    private static readonly Gen<string> Whole = Gen.Select(
        Body,
        Body.Array[0, 2],
        Gen.OneOf("", "^2+", "^-", "²⁻"),
        Gen.OneOf("", "(s)", "(l)", "(g)", "(aq)"),
        (body, added, charge, state) => string.Join("·3", [body, .. added]) + charge + state);

    private static readonly Gen<string> Noise =
        Gen.OneOf("MgOHCeaqslxX0123456789()[]{}^+-⁺⁻²₂.·* ,\t\u0000é\uD800∑".ToCharArray())
            .Array[0, 40].Select(letters => new string(letters));

    [Fact]
    public void The_plain_form_reads_back_to_the_same_formula() => Whole.Always(text =>
    {
        Formula formula = Formula.Parse(text).Value;
        Assert.Equal(formula, Formula.Parse(formula.ToString()).Value);
        Assert.Equal(formula.Composition, Formula.Parse(formula.ToString()).Value.Composition);
    });

    [Fact]
    public void The_Unicode_form_reads_back_to_the_same_formula() => Whole.Always(text =>
    {
        Formula formula = Formula.Parse(text).Value;
        Assert.Equal(formula, Formula.Parse(formula.ToUnicode()).Value);
    });

    [Fact]
    public void Brackets_with_a_number_are_so_many_times_their_content() => Gen.Select(Body, Gen.Int[2, 999]).Always(
        (body, n) => Assert.Equal(
            Formula.Parse(body).Value.Composition.Select(a => new ElementCount(a.Element, a.Count * n)),
            Formula.Parse($"({body}){n}").Value.Composition));

    [Fact]
    public void Any_text_is_read_or_declined_within_its_own_length() => Gen.OneOf(Noise, Gen.String).Always(text =>
    {
        Parsed<Formula> read = Formula.Parse(text);
        Assert.True(read.Succeeded || (read.Fault.Span.Start >= 0 && read.Fault.Span.End <= text.Length), text);
        Assert.True(read.Succeeded || read.Fault.Suggestion is not { } meant || Formula.Parse(meant).Succeeded, text);
    });

    [Theory]
    [InlineData("(", 1, "brackets stand at most 8 deep in each other")]
    [InlineData("H999999", 1, null)]
    [InlineData("H1000000", 1, "a number in a formula has at most 6 digits")]
    [InlineData("mg", 100, "an element's symbol begins with a capital letter")]
    [InlineData("A", 257, "a formula has at most 256 characters")]
    public void Each_size_has_an_end(string piece, int times, string? reason)
    {
        string text = string.Concat(Enumerable.Repeat(piece, times == 1 && piece == "(" ? 200 : times));
        Assert.Equal(reason, Formula.Parse(text).Fault?.Reason);
    }

    [Fact]
    public void Numbers_that_multiply_beyond_a_thousand_million_are_declined() => Assert.Equal(
        "there are more than a thousand million atoms of one element", Formula.Parse("((H99999)99999)999999").Fault!.Reason);

    // A suggestion is read once and makes no suggestions of its own, or these would be read within each other.
    [Theory]
    [InlineData("H0", 128)]
    [InlineData("2 ", 128)]
    [InlineData("H 2", 80)]
    [InlineData("2H,2H:", 40)]
    [InlineData("Fe3+", 60)]
    public void Faults_that_repeat_do_not_pile_up(string piece, int times)
        => Assert.False(Formula.Parse(string.Concat(Enumerable.Repeat(piece, times))).Succeeded);

    [Fact]
    public void Runs_of_one_element_are_added_up() => Assert.Equal(
        [new ElementCount(Element.Of("H"), 128)], Formula.Parse(new string('H', 128)).Value.Composition);
}
