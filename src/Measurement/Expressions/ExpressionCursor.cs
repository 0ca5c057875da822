using Calx.Measurement.Numbers;

namespace Calx.Measurement.Expressions;

/// <summary>A place in the text of a formula, and the few ways of moving on. It rests on a character that is no blank,
/// or at the end.</summary>
internal struct ExpressionCursor(string text)
{
    private int lastEnd;

    public int Position { get; private set; }

    public readonly bool AtEnd => Position == text.Length;

    public readonly char Current => text[Position];

    /// <summary>The whole character here, both halves where UTF-16 needs two.</summary>
    public readonly string CurrentText
        => Position + 1 < text.Length && char.IsSurrogatePair(text, Position) ? text.Substring(Position, 2) : text.Substring(Position, 1);

    public readonly bool StandsAtNumber
        => !AtEnd && (IsDigit(Position) || (Current == '.' && IsDigit(Position + 1)));

    /// <summary>From a start to just behind the last thing taken.</summary>
    public readonly SourceSpan SpanFrom(int start) => new(start, lastEnd - start);

    /// <summary>The opening bracket that belongs to what starts here.</summary>
    public readonly SourceSpan BracketBefore(int start) => new(text.IndexOf('(', start), 1);

    public void SkipBlanks()
    {
        while (!AtEnd && char.IsWhiteSpace(Current))
        {
            Position++;
        }
    }

    public bool Take(char wanted)
    {
        bool here = !AtEnd && Current == wanted;
        if (here)
        {
            MoveTo(Position + 1);
        }

        return here;
    }

    /// <summary>Takes one of the operators, if one stands here.</summary>
    public Operator? TakeOperator(params ReadOnlySpan<Operator> wanted)
    {
        Operator? here = AtEnd ? null : OperatorOf(Current);
        if (here is not { } found || !wanted.Contains(found))
        {
            return null;
        }

        MoveTo(Position + 1);
        return found;
    }

    public string TakeName()
    {
        int end = Position;
        while (end < text.Length && ExpressionNames.GoesOnInName(text[end]))
        {
            end++;
        }

        string name = text[Position..end];
        MoveTo(end);
        return name;
    }

    public SourceSpan TakeNumber()
    {
        int start = Position;
        int end = AfterDigits(start);
        if (end < text.Length && text[end] == '.')
        {
            end = AfterDigits(end + 1);
        }

        MoveTo(AfterExponent(end));
        return SpanFrom(start);
    }

    /// <summary>Takes what stands up to the bracket that closes M( ), and that bracket; null where none closes it.</summary>
    public SourceSpan? TakeSubstance()
    {
        int open = 1;
        for (int place = Position; place < text.Length; place++)
        {
            open += text[place] == '(' ? 1 : text[place] == ')' ? -1 : 0;
            if (open == 0)
            {
                int length = text.AsSpan(Position, place - Position).TrimEnd().Length;
                var span = new SourceSpan(Position, length);
                MoveTo(place + 1);
                return span;
            }
        }

        return null;
    }

    private static Operator? OperatorOf(char c) => c switch
    {
        '+' => Operator.Add,
        '-' or '−' or '–' => Operator.Subtract,
        '*' or '×' or '·' or '⋅' => Operator.Multiply,
        '/' or '÷' => Operator.Divide,
        '^' => Operator.Power,
        _ => null,
    };

    private readonly bool IsDigit(int place) => place < text.Length && char.IsAsciiDigit(text[place]);

    private readonly int AfterDigits(int place)
    {
        while (IsDigit(place))
        {
            place++;
        }

        return place;
    }

    // An e without digits behind it is no exponent: it is left for the fault that asks for an operator.
    private readonly int AfterExponent(int end)
    {
        if (end >= text.Length || text[end] is not ('e' or 'E'))
        {
            return end;
        }

        int digits = end + 1;
        if (digits < text.Length && text[digits] is '+' or '-' or '−')
        {
            digits++;
        }

        return IsDigit(digits) ? AfterDigits(digits) : end;
    }

    private void MoveTo(int place)
    {
        Position = place;
        lastEnd = place;
        SkipBlanks();
    }
}
