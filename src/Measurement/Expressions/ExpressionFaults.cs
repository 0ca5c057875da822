using System.Globalization;
using Calx.Measurement.Numbers;

namespace Calx.Measurement.Expressions;

/// <summary>The wording of what can be wrong with the text of a formula.</summary>
internal static class ExpressionFaults
{
    private const string Superscripts = "⁰¹²³⁴⁵⁶⁷⁸⁹";

    /// <summary>A value was expected where the cursor stands.</summary>
    public static TextFault NoValue(ExpressionCursor cursor)
    {
        if (cursor.AtEnd)
        {
            return new TextFault(
                new SourceSpan(cursor.Position, 0), "the formula ends where a number, name or bracket was expected");
        }

        char c = cursor.Current;
        var here = new SourceSpan(cursor.Position, cursor.CurrentText.Length);
        return c switch
        {
            ')' => new TextFault(here, "a number, name or bracket was expected before ')'"),
            '√' => new TextFault(here, "'√' is not understood", "sqrt( )"),
            '[' or '{' => new TextFault(here, $"only round brackets are understood, not '{c}'", "("),
            '*' => new TextFault(here, "a number, name or bracket was expected before '*'; a power is written with ^"),
            _ => new TextFault(here, $"a number, name or bracket was expected instead of '{cursor.CurrentText}'"),
        };
    }

    /// <summary>A whole value is read and what stands behind it does not go on from there.</summary>
    public static TextFault NotAnOperator(ExpressionCursor cursor)
    {
        char c = cursor.Current;
        var here = new SourceSpan(cursor.Position, cursor.CurrentText.Length);
        return c switch
        {
            ')' => new TextFault(here, "this ')' has no '(' before it"),
            ',' => new TextFault(here, "a comma stands only between the arguments of min and max; decimals take a full stop"),
            '=' => new TextFault(here, "a formula has no equals sign: write only what stands behind it"),
            '%' => new TextFault(here, "'%' is not understood", "/ 100"),
            _ when Superscripts.Contains(c) => new TextFault(
                here, "raised digits are not understood", "^" + Superscripts.IndexOf(c).ToString(CultureInfo.InvariantCulture)),
            _ when c == '(' || cursor.StandsAtNumber || ExpressionNames.StartsName(c)
                => new TextFault(here, $"an operator (+ - * / ^) is missing before '{c}'", $"* {c}"),
            _ => new TextFault(here, $"'{cursor.CurrentText}' is not understood; an operator (+ - * / ^) was expected"),
        };
    }

    /// <summary>The fault of a number's digits, if any: beyond what a double holds.</summary>
    public static TextFault? OfNumber(string text, SourceSpan span, out double value)
    {
        ReadOnlySpan<char> digits = text.AsSpan(span.Start, span.Length);
        value = double.Parse(
            digits.ToString().Replace('−', '-'), NumberStyles.Float, CultureInfo.InvariantCulture);
        int mantissa = digits.IndexOfAny('e', 'E');
        ReadOnlySpan<char> significant = mantissa < 0 ? digits : digits[..mantissa];
        if (!double.IsFinite(value))
        {
            return new TextFault(span, "the number is too large to compute with: the largest is about 1.8e308");
        }

        return value == 0 && significant.ContainsAnyInRange('1', '9')
            ? new TextFault(span, "the number is too small to be told from 0: the smallest is about 5e-324")
            : null;
    }

    public static TextFault BareFunction(string name, SourceSpan span)
        => new(span, $"{name} is a function and needs its argument in brackets", $"{name}( )");

    public static TextFault NoSuchFunction(string name, SourceSpan span)
        => ExpressionNames.Nearest(name) is { } near
            ? new TextFault(span, $"there is no function '{name}'", near)
            : new TextFault(
                span, $"there is no function '{name}', only {ExpressionNames.All} and M; a product is written with *");

    public static TextFault NeverClosed(SourceSpan bracket) => new(bracket, "this '(' is never closed");

    public static TextFault WrongArguments(Function function, int count, SourceSpan span)
    {
        string wanted = function is Function.Min or Function.Max ? "two arguments or more" : "one argument";
        string given = count == 1 ? "1 is" : count.ToString(CultureInfo.InvariantCulture) + " are";
        return new TextFault(span, $"{ExpressionNames.Of(function)} takes {wanted}; {given} given");
    }
}
