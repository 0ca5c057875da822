using Calx.Chemistry.Formulas;

namespace Calx.Chemistry.Equations;

/// <summary>One species of an equation with the coefficient written before it.</summary>
public sealed class Term
{
    /// <summary>One species of an equation.</summary>
    /// <param name="coefficient">The number written before it, at least 1, or null where none is written.</param>
    /// <param name="formula">The species.</param>
    /// <exception cref="ArgumentOutOfRangeException">The coefficient is below 1.</exception>
    public Term(long? coefficient, Formula formula)
    {
        ArgumentNullException.ThrowIfNull(formula);
        if (coefficient is < 1)
        {
            throw new ArgumentOutOfRangeException(nameof(coefficient), coefficient, "A coefficient is at least 1.");
        }

        Coefficient = coefficient;
        Formula = formula;
    }

    /// <summary>The number written before the formula; null where none is written, which counts as 1.</summary>
    public long? Coefficient { get; }

    /// <summary>The species.</summary>
    public Formula Formula { get; }
}
