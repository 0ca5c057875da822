namespace Calx.Measurement.Expressions;

/// <summary>The functions that a formula may use.</summary>
public enum Function
{
    /// <summary>Natural logarithm.</summary>
    Ln,

    /// <summary>Logarithm to base 10.</summary>
    Log10,

    /// <summary>e raised to the argument.</summary>
    Exp,

    /// <summary>Square root.</summary>
    Sqrt,

    /// <summary>The argument without its sign.</summary>
    Abs,

    /// <summary>The smallest of two or more arguments.</summary>
    Min,

    /// <summary>The largest of two or more arguments.</summary>
    Max,
}
