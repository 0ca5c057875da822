namespace Calx.Chemistry.Equations;

/// <summary>What is said of an equation that cannot be read, in one place.</summary>
internal static class EquationFaults
{
    public const string Empty = "an equation is missing here";
    public const string NoArrow = "an arrow is missing: write -> between the two sides";
    public const string SecondArrow = "an equation has one arrow";
    public const string WholeCoefficients = "coefficients are whole numbers here; multiply the whole equation";
    public const string ZeroCoefficient = "a coefficient does not begin with 0";

    public static readonly string TooLong = $"an equation has at most {EquationLimits.Characters} characters";

    public static readonly string TooManySpecies = $"an equation has at most {EquationLimits.Species} species";

    public static readonly string TooManyElements = $"an equation has at most {EquationLimits.Elements} elements";

    public static readonly string LongCoefficient =
        $"a coefficient has at most {EquationLimits.CoefficientDigits} digits";
}
