namespace Calx.Practicals.Marking.Written;

/// <summary>How a number is written.</summary>
public enum AnswerForm
{
    /// <summary>As a decimal number, with or without a power of ten.</summary>
    Decimal,

    /// <summary>As one whole number over another.</summary>
    Fraction,

    /// <summary>As a ratio.</summary>
    Ratio,
}
