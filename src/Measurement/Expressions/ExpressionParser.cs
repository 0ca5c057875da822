using Calx.Measurement.Numbers;

namespace Calx.Measurement.Expressions;

/// <summary>
/// Reads a formula by recursive descent, one method a rule. Blanks may stand between any two symbols.
/// <code>
/// formula  = sum
/// sum      = product { ( "+" | "-" ) product }
/// product  = unary { ( "*" | "/" ) unary }
/// unary    = "-" unary | power
/// power    = atom [ "^" exponent ]
/// exponent = "-" exponent | power
/// atom     = number | name | function "(" sum { "," sum } ")" | "M" "(" substance ")" | "(" sum ")"
/// number   = ( digit { digit } [ "." { digit } ] | "." digit { digit } ) [ ( "e" | "E" ) [ "+" | "-" ] digit { digit } ]
/// name     = ( letter | "_" ) { letter | digit | "_" }, but none of the functions
/// function = "ln" | "log10" | "exp" | "sqrt" | "abs" | "min" | "max"
/// substance = any text in which each "(" has its ")"
/// </code>
/// For * also × · ⋅, for / also ÷, for - also − and –.
/// </summary>
internal sealed class ExpressionParser(string text)
{
    /// <summary>Longest text read. A formula of a practical has some 100 characters; twenty times as much is no formula,
    /// and the bound keeps the depth of a left-grouping chain (1 + 1 + ...) at 1,000, safe for recursion.</summary>
    public const int LongestText = 2000;

    /// <summary>Most brackets, functions, signs and powers within each other. Written formulas stay below 10; each level
    /// takes some ten stack frames, so 100 are far from the end of the smallest thread's stack.</summary>
    public const int DeepestNesting = 100;

    private ExpressionCursor cursor = new(text);
    private int depth;
    private TextFault? fault;

    public Parsed<Expression> Read()
    {
        if (text.Length > LongestText)
        {
            return new TextFault(
                new SourceSpan(LongestText, text.Length - LongestText),
                $"the formula has {text.Length} characters; at most {LongestText} are read");
        }

        cursor.SkipBlanks();
        if (cursor.AtEnd)
        {
            return new TextFault(new SourceSpan(0, text.Length), "the formula is empty");
        }

        Expression? formula = Sum();
        if (formula is not null && !cursor.AtEnd)
        {
            fault = ExpressionFaults.NotAnOperator(cursor);
        }

        return fault is null ? formula! : fault;
    }

    private Expression? Sum()
    {
        int start = cursor.Position;
        Expression? left = Product();
        while (left is not null && cursor.TakeOperator(Operator.Add, Operator.Subtract) is { } taken)
        {
            left = Join(taken, left, Product(), start);
        }

        return left;
    }

    private Expression? Product()
    {
        int start = cursor.Position;
        Expression? left = Unary();
        while (left is not null && cursor.TakeOperator(Operator.Multiply, Operator.Divide) is { } taken)
        {
            left = Join(taken, left, Unary(), start);
        }

        return left;
    }

    private Expression? Unary() => Signed(Unary);

    private Expression? Exponent() => Signed(Exponent);

    private Expression? Signed(Func<Expression?> behindSign)
    {
        int start = cursor.Position;
        if (cursor.TakeOperator(Operator.Subtract) is null)
        {
            return Power();
        }

        Expression? operand = Nested(start, behindSign);
        return operand is null ? null : new Negation(operand, cursor.SpanFrom(start));
    }

    private Expression? Power()
    {
        int start = cursor.Position;
        Expression? number = Atom();
        int sign = cursor.Position;
        return number is not null && cursor.TakeOperator(Operator.Power) is { } taken
            ? Join(taken, number, Nested(sign, Exponent), start)
            : number;
    }

    private Expression? Atom()
    {
        int start = cursor.Position;
        if (cursor.StandsAtNumber)
        {
            return Number(start);
        }

        if (!cursor.AtEnd && ExpressionNames.StartsName(cursor.Current))
        {
            return NameOrCall(start);
        }

        return cursor.Take('(') ? Bracketed(start) : Fail(ExpressionFaults.NoValue(cursor));
    }

    private Expression? Number(int start)
    {
        SourceSpan span = cursor.TakeNumber();
        TextFault? outOfRange = ExpressionFaults.OfNumber(text, span, out double value);
        return outOfRange is null ? new NumberTerm(value, new SourceSpan(start, span.Length)) : Fail(outOfRange);
    }

    private Expression? NameOrCall(int start)
    {
        string name = cursor.TakeName();
        var nameSpan = new SourceSpan(start, name.Length);
        Function? function = ExpressionNames.Find(name);
        if (!cursor.Take('('))
        {
            return function is null ? new NameTerm(name, nameSpan) : Fail(ExpressionFaults.BareFunction(name, nameSpan));
        }

        if (name == "M")
        {
            return MolarMass(start);
        }

        return function is { } known ? Call(known, start) : Fail(ExpressionFaults.NoSuchFunction(name, nameSpan));
    }

    private Expression? Bracketed(int start)
    {
        Expression? inner = Nested(start, Sum);
        return inner is null || Close(start) ? inner : null;
    }

    private Expression? MolarMass(int start)
    {
        if (cursor.TakeSubstance() is not { } substance)
        {
            return Fail(ExpressionFaults.NeverClosed(cursor.BracketBefore(start)));
        }

        string formula = text.Substring(substance.Start, substance.Length);
        return ExpressionNames.IsFormulaText(formula)
            ? new MolarMassTerm(formula, cursor.SpanFrom(start), substance)
            : Fail(new TextFault(cursor.SpanFrom(start), "M( ) takes the formula of a substance, as in M(MgO)"));
    }

    private FunctionCall? Call(Function function, int start)
    {
        var arguments = new List<Expression>();
        do
        {
            if (Nested(start, Sum) is not { } argument)
            {
                return null;
            }

            arguments.Add(argument);
        }
        while (cursor.Take(','));

        if (!Close(start))
        {
            return null;
        }

        if (!ExpressionNames.Takes(function, arguments.Count))
        {
            Fail(ExpressionFaults.WrongArguments(function, arguments.Count, cursor.SpanFrom(start)));
            return null;
        }

        return new FunctionCall(function, arguments, cursor.SpanFrom(start));
    }

    private bool Close(int start)
    {
        if (cursor.Take(')'))
        {
            return true;
        }

        Fail(cursor.AtEnd
            ? ExpressionFaults.NeverClosed(cursor.BracketBefore(start))
            : ExpressionFaults.NotAnOperator(cursor));
        return false;
    }

    private Expression? Nested(int start, Func<Expression?> rule)
    {
        if (depth == DeepestNesting)
        {
            return Fail(new TextFault(
                new SourceSpan(start, 1),
                $"the formula is nested too deeply; at most {DeepestNesting} levels are read"));
        }

        depth++;
        Expression? read = rule();
        depth--;
        return read;
    }

    // The span runs from the first character, brackets of the left operand included, to the last one taken.
    private BinaryOperation? Join(Operator taken, Expression left, Expression? right, int start)
        => right is null ? null : new BinaryOperation(taken, left, right, cursor.SpanFrom(start));

    private Expression? Fail(TextFault found)
    {
        fault ??= found;
        return null;
    }
}
