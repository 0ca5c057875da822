using Calx.Measurement.Numbers;

namespace Calx.Measurement.Uncertainty;

/// <summary>
/// A calculation that has no finite answer for the numbers given: a division by zero, the logarithm or square root of
/// a number that has none, a result too large for a double, or a derivative asked for at a corner. Every function of
/// this library throws it instead of handing NaN or an infinity upward; the message is a sentence for a person.
/// </summary>
public sealed class UndefinedResultException : ArithmeticException
{
    /// <summary>Describes a fault whose place in a formula is not known (yet).</summary>
    /// <param name="operation">What was being computed, for instance <c>division</c> or <c>ln</c>.</param>
    /// <param name="reason">A plain sentence without a full stop.</param>
    public UndefinedResultException(string operation, string reason)
        : this(operation, reason, null, null)
    {
    }

    private UndefinedResultException(string operation, string reason, string? place, SourceSpan? span)
        : base(place is null ? reason : $"{reason}, in '{place}'")
    {
        Operation = operation;
        Reason = reason;
        Place = place;
        Span = span;
    }

    /// <summary>What was being computed: <c>+</c>, <c>/</c>, <c>^</c>, <c>ln</c>, <c>first-order propagation</c> ...</summary>
    public string Operation { get; }

    /// <summary>Why there is no answer, with the number that is to blame.</summary>
    public string Reason { get; }

    /// <summary>The part of the formula that has no value, as text; null outside a formula.</summary>
    public string? Place { get; }

    /// <summary>Where that part stands in the text of the formula; null outside a formula.</summary>
    public SourceSpan? Span { get; }

    /// <summary>The same fault, with its place in a formula.</summary>
    internal UndefinedResultException At(string place, SourceSpan span) => new(Operation, Reason, place, span);
}
