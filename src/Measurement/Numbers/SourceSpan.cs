namespace Calx.Measurement.Numbers;

/// <summary>A run of characters in a text that a person wrote.</summary>
/// <param name="Start">Index of the first character, from 0.</param>
/// <param name="Length">How many UTF-16 code units it covers; 0 marks a place between two characters.</param>
public readonly record struct SourceSpan(int Start, int Length)
{
    /// <summary>Index just after the last character.</summary>
    public int End => Start + Length;

    /// <summary>The shortest span that covers both this one and <paramref name="other"/>.</summary>
    public SourceSpan Through(SourceSpan other)
    {
        int start = Math.Min(Start, other.Start);
        return new SourceSpan(start, Math.Max(End, other.End) - start);
    }
}
