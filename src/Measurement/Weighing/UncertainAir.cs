using Calx.Measurement.Uncertainty;

namespace Calx.Measurement.Weighing;

/// <summary>
/// Air density and buoyancy with uncertainty. Derivatives by the air's four quantities are central differences over a
/// ten-thousandth of their usual size, where the formula is so smooth that eight digits are right.
/// </summary>
public static class UncertainAir
{
    /// <summary>Density of the air in kg/m³ by CIPM-2007, the formula's own uncertainty included.</summary>
    /// <param name="temperatureInCelsius">Temperature, in °C.</param>
    /// <param name="pressureInPascals">Pressure, in Pa.</param>
    /// <param name="relativeHumidity">Relative humidity as a fraction.</param>
    /// <param name="carbonDioxideFraction">Amount fraction of carbon dioxide.</param>
    /// <exception cref="ArgumentOutOfRangeException">A value is out of the range of <see cref="AirState"/>.</exception>
    public static UncertainValue Density(
        UncertainValue temperatureInCelsius,
        UncertainValue pressureInPascals,
        UncertainValue relativeHumidity,
        UncertainValue carbonDioxideFraction)
    {
        UncertainValue[] parts = [temperatureInCelsius, pressureInPascals, relativeHumidity, carbonDioxideFraction];
        double[] at = [.. parts.Select(part => part.Value)];
        double density = AirDensity.Cipm2007(State(at));
        double[] slopes = [Slope(at, 0, 2e-3), Slope(at, 1, 10), Slope(at, 2, 1e-4), Slope(at, 3, 4e-8)];
        UncertainValue formula = UncertainValue.Of("CIPM-2007 formula", 1, AirDensity.Cipm2007RelativeUncertainty);
        return UncertainValue.Combine(density, parts, slopes) * formula;
    }

    /// <summary>
    /// The mass of a load in grams from what the balance shows, as <see cref="Buoyancy.TrueMass"/>.
    /// </summary>
    /// <param name="shownInGrams">The reading, in grams.</param>
    /// <param name="density">Density of the load, in kg/m³.</param>
    /// <param name="airDensity">Density of the air, in kg/m³.</param>
    /// <param name="weightDensity">Density of the adjusting weights, in kg/m³.</param>
    /// <exception cref="UndefinedResultException">The load is as light as the air.</exception>
    public static UncertainValue TrueMass(
        UncertainValue shownInGrams, UncertainValue density, UncertainValue airDensity, UncertainValue weightDensity) =>
        shownInGrams * (1 - (airDensity / weightDensity)) / (1 - (airDensity / density));

    private static AirState State(double[] at) => new(at[0], at[1], at[2], at[3]);

    /// <summary>Central difference, moved inwards where a step would leave the range of humidity or carbon dioxide.</summary>
    private static double Slope(double[] at, int which, double step)
    {
        double[] high = [.. at];
        double[] low = [.. at];
        bool fraction = which >= 2;
        high[which] = fraction ? Math.Min(1, at[which] + step) : at[which] + step;
        low[which] = fraction ? Math.Max(0, at[which] - step) : at[which] - step;
        return (AirDensity.Cipm2007(State(high)) - AirDensity.Cipm2007(State(low))) / (high[which] - low[which]);
    }
}
