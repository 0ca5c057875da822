using Calx.Measurement.Expressions;

namespace Calx.Practicals.Marking.Ideas;

/// <summary>A right formula changed by one idea.</summary>
/// <param name="Tree">The changed formula.</param>
/// <param name="Idea">What changed it.</param>
/// <param name="Rounding">What is rounded in it on the way, or null.</param>
internal sealed record Mutation(Expression Tree, Idea Idea, Rounding? Rounding = null);

/// <summary>Parts of a formula that are rounded before they are used.</summary>
/// <param name="Nodes">The parts, found by reference.</param>
/// <param name="Digits">To how many decimals or figures.</param>
/// <param name="IsFigures">Whether <paramref name="Digits"/> are significant figures; else decimals.</param>
internal sealed record Rounding(IReadOnlyList<Expression> Nodes, int Digits, bool IsFigures)
{
    /// <summary>A value so rounded, halves away from zero as students do.</summary>
    public static double Of(double value, int digits, bool isFigures)
    {
        if (value == 0 || !double.IsFinite(value))
        {
            return value;
        }

        int decimals = isFigures ? digits - 1 - (int)Math.Floor(Math.Log10(Math.Abs(value))) : digits;
        double scale = Math.Pow(10, decimals);
        // Readings are whole numbers of small steps, so a half is meant where binary lies a hair beside it.
        return Math.Round((value * scale) + (Math.Sign(value) * 1e-9), MidpointRounding.AwayFromZero) / scale;
    }
}
