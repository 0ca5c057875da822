namespace Calx.Papers.Documents;

/// <summary>A part of an equation. A closed set.</summary>
public abstract class MathPart
{
    private MathPart()
    {
    }

    /// <summary>Words, numbers and signs, upright: quantities in words are no variables.</summary>
    public sealed class Words(string text) : MathPart
    {
        /// <summary>The text.</summary>
        public string Text { get; } = text;
    }

    /// <summary>Parts side by side.</summary>
    public sealed class Row(params IReadOnlyList<MathPart> parts) : MathPart
    {
        /// <summary>The parts, from the left.</summary>
        public IReadOnlyList<MathPart> Parts { get; } = parts;
    }

    /// <summary>A fraction.</summary>
    public sealed class Fraction(MathPart above, MathPart below) : MathPart
    {
        /// <summary>What stands above its line.</summary>
        public MathPart Above { get; } = above;

        /// <summary>What stands below.</summary>
        public MathPart Below { get; } = below;
    }

    /// <summary>A part in round brackets.</summary>
    public sealed class Bracketed(MathPart content) : MathPart
    {
        /// <summary>What is in the brackets.</summary>
        public MathPart Content { get; } = content;
    }

    /// <summary>A place to write a number in.</summary>
    public sealed class Blank : MathPart;
}
