namespace Calx.Measurement.Numbers;

/// <summary>Why a text could not be read: where, what is wrong, and what would have been understood.</summary>
public sealed class TextFault
{
    /// <summary>Describes one fault of a text.</summary>
    /// <param name="span">The offending characters; length 0 where something is missing.</param>
    /// <param name="reason">A plain sentence without a full stop: what is wrong and what was expected.</param>
    /// <param name="suggestion">A text that would be read and is probably meant, or null where none is near.</param>
    /// <exception cref="ArgumentException"><paramref name="reason"/> is empty.</exception>
    public TextFault(SourceSpan span, string reason, string? suggestion = null)
    {
        ArgumentException.ThrowIfNullOrWhiteSpace(reason);
        Span = span;
        Reason = reason;
        Suggestion = suggestion;
    }

    /// <summary>The offending characters.</summary>
    public SourceSpan Span { get; }

    /// <summary>What is wrong and what was expected, for the person who wrote it.</summary>
    public string Reason { get; }

    /// <summary>What was probably meant, or null.</summary>
    public string? Suggestion { get; }

    /// <summary>The reason, with the suggestion behind it.</summary>
    public override string ToString() => Suggestion is null ? Reason : $"{Reason}; did you mean {Suggestion}?";
}
