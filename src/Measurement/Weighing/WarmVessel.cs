namespace Calx.Measurement.Weighing;

/// <summary>
/// How much lower a balance reads while the vessel on its pan is warmer than the room: air rising along it drags it
/// upwards. Proportional to the temperature excess; a vessel colder than the room reads high by the same law.
/// </summary>
/// <remarks>
/// E. Blade (Differential temperature error in weighing, Analytical Chemistry) saw at most 0.19 mg per kelvin for a
/// 17 g glazed porcelain crucible on a damped two-pan balance. A top-pan balance may differ: 0.12 to 0.30 mg per
/// kelvin is a judgement, taken as rectangular.
/// </remarks>
public static class WarmVessel
{
    /// <summary>Blade's coefficient, in grams per kelvin.</summary>
    public const double BladeCoefficient = 0.19e-3;

    /// <summary>Least coefficient in grams per kelvin: a judgement.</summary>
    public const double LeastCoefficient = 0.12e-3;

    /// <summary>Greatest coefficient in grams per kelvin: a judgement.</summary>
    public const double GreatestCoefficient = 0.30e-3;

    /// <summary>
    /// Standard uncertainty in grams per kelvin of a coefficient known only to lie in the judged range.
    /// </summary>
    public static double CoefficientStandardUncertainty => (GreatestCoefficient - LeastCoefficient) / Math.Sqrt(12);

    /// <summary>How much too low the reading is, in grams; negative for a vessel colder than the room.</summary>
    /// <param name="excessInKelvins">Temperature of the vessel above the room's, in K.</param>
    /// <param name="gramsPerKelvin">The coefficient, 0 or more.</param>
    /// <exception cref="ArgumentOutOfRangeException">The coefficient is negative.</exception>
    public static double LowReadingInGrams(double excessInKelvins, double gramsPerKelvin = BladeCoefficient)
    {
        ArgumentOutOfRangeException.ThrowIfNegative(gramsPerKelvin);
        return gramsPerKelvin * excessInKelvins;
    }

    /// <summary>The temperature excess in kelvins at which the reading is too low by a given amount.</summary>
    /// <param name="lowReadingInGrams">The error that can be borne, in grams; half a division as a rule.</param>
    /// <param name="gramsPerKelvin">The coefficient, above 0.</param>
    /// <exception cref="ArgumentOutOfRangeException">The coefficient is not above 0.</exception>
    public static double ExcessInKelvins(double lowReadingInGrams, double gramsPerKelvin = BladeCoefficient)
    {
        ArgumentOutOfRangeException.ThrowIfNegativeOrZero(gramsPerKelvin);
        return lowReadingInGrams / gramsPerKelvin;
    }

    /// <summary>The temperature excess in kelvins at which warmth takes half a division off the reading.</summary>
    /// <param name="balance">The balance that shows the reading.</param>
    /// <param name="gramsPerKelvin">The coefficient, above 0.</param>
    /// <exception cref="ArgumentNullException"><paramref name="balance"/> is null.</exception>
    /// <exception cref="ArgumentOutOfRangeException">The coefficient is not above 0.</exception>
    public static double ExcessForHalfDivision(Balance balance, double gramsPerKelvin = BladeCoefficient)
    {
        ArgumentNullException.ThrowIfNull(balance);
        return ExcessInKelvins(balance.ResolutionInGrams / 2, gramsPerKelvin);
    }

    /// <summary>
    /// How much lower a reading is, in grams, because the air standing in a lidded vessel is warm and thin; the lid lets
    /// air pass, so that the pressure is the room's.
    /// </summary>
    /// <param name="volumeInCubicCentimetres">Volume of the air inside, in cm³.</param>
    /// <param name="excessInKelvins">Its temperature above the room's, in K, above −273.</param>
    /// <param name="roomInCelsius">Temperature of the room, in °C.</param>
    /// <exception cref="ArgumentOutOfRangeException">The excess would take the air to absolute zero.</exception>
    public static double LightAirInGrams(double volumeInCubicCentimetres, double excessInKelvins, double roomInCelsius = 20)
    {
        double warm = roomInCelsius + 273.15 + excessInKelvins;
        ArgumentOutOfRangeException.ThrowIfNegativeOrZero(warm, nameof(excessInKelvins));
        return volumeInCubicCentimetres * Buoyancy.ConventionalAirDensity / 1000 * (excessInKelvins / warm);
    }
}
