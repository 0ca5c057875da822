namespace Calx.Practicals.Marking.Written;

/// <summary>What a student wrote as a number. The cases are here, and no others.</summary>
public abstract record AnswerText
{
    /// <summary>Half of one in the last place, as a share of the number, from which on it shows little. Judgement.</summary>
    internal const double Coarse = 0.05;

    private AnswerText()
    {
    }

    /// <summary>Nothing, or a dash.</summary>
    public sealed record Nothing : AnswerText;

    /// <summary>A number.</summary>
    /// <param name="Value">Its value; a ratio <c>a : b</c> is a for each b, a percentage is the number before its sign.</param>
    /// <param name="HalfWidth">Half of one in the last place written: the value before rounding lay so near. 0 for a fraction.</param>
    /// <param name="Figures">Significant figures written; of a ratio those of its coarser side, a lone 1 left out.</param>
    /// <param name="Decimals">Decimals written, or null where a power of ten, fraction or ratio has none of its own.</param>
    /// <param name="Unit">What stands behind the number, without blanks around; empty for nothing.</param>
    /// <param name="Form">How it is written.</param>
    /// <param name="Said">What stands before an equals sign, as in <c>O : Mg = 0.89 : 1</c>; empty for nothing.</param>
    public sealed record Number(double Value, double HalfWidth, int Figures, int? Decimals, string Unit, AnswerForm Form, string Said = "") : AnswerText
    {
        /// <summary>The same number in another unit, or as its reciprocal.</summary>
        /// <param name="value">The value there.</param>
        /// <param name="halfWidth">Its rounding there, at least 0.</param>
        public Number As(double value, double halfWidth) => this with { Value = value, HalfWidth = halfWidth, Decimals = null };

        /// <summary>Whether it is rounded so far that it shows little of how it was come by.</summary>
        public bool IsCoarse => HalfWidth > Coarse * Math.Abs(Value);

        /// <summary>Whether a value, rounded as this was, could be written so.</summary>
        public bool CouldBe(double value) => Math.Abs(value - Value) <= (HalfWidth * (1 + 1e-9)) + (1e-9 * Math.Abs(Value));
    }

    /// <summary>Something that is no number.</summary>
    /// <param name="Reason">Why, for people.</param>
    public sealed record Unreadable(string Reason) : AnswerText;

    /// <summary>Reads what a student wrote: <c>0.24</c>, <c>0,24</c>, <c>0.24 g</c>, <c>24 %</c>, <c>9.9e-3</c>, <c>9.9 x 10^-3</c>,
    /// <c>9.9 × 10⁻³</c>, <c>7/8</c>, <c>1.1:1</c>, <c>1 : 1.13</c>, each also
    /// behind a name and an equals sign.</summary>
    /// <param name="text">At most <see cref="AnswerReader.LongestText"/> characters.</param>
    public static AnswerText Read(string? text) => AnswerReader.Read(text ?? string.Empty);
}
