using Calx.Chemistry.Elements;
using Calx.Measurement.Distributions;
using Calx.Practicals.Definition;

namespace Calx.Practicals.Findings;

/// <summary>One of the equations that a practical asks the class to decide between, held against the class's value.</summary>
public sealed class EquationChoice
{
    private EquationChoice(Alternative alternative, double expected, double p)
    {
        Alternative = alternative;
        Expected = expected;
        P = p;
    }

    /// <summary>The equation.</summary>
    public Alternative Alternative { get; }

    /// <summary>The key quantity if this equation is right and the reaction complete.</summary>
    public double Expected { get; }

    /// <summary>Two-sided probability of so large a distance from it by chance.</summary>
    public double P { get; }

    /// <summary>Whether the class's value is within chance of it (5 %).</summary>
    public bool Fits => P >= 0.05;

    /// <summary>Every equation of the practical; empty where it names none or no group gives the key quantity.</summary>
    internal static IReadOnlyList<EquationChoice> All(Practical practical, ClassQuantity? key, AtomicWeights weights)
    {
        if (key is null)
        {
            return [];
        }

        return [.. practical.Findings.Alternatives.Select(alternative =>
        {
            double expected = alternative.ExpectedFraction(weights).Value;
            (double u, double degrees) = key.AsClass;
            return new EquationChoice(alternative, expected, 2 * StudentT.Cumulative(-Math.Abs(key.Value - expected) / u, degrees));
        })];
    }
}
