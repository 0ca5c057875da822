namespace Calx.Measurement.Weighing;

/// <summary>Density of moist air, in kg/m³.</summary>
public static class AirDensity
{
    /// <summary>Relative standard uncertainty of the CIPM-2007 formula itself (Picard et al. 2008; from memory).</summary>
    public const double Cipm2007RelativeUncertainty = 22e-6;

    /// <summary>Relative standard uncertainty of the simplified formula (OIML R 111-1:2004, E.3; from memory).</summary>
    public const double SimplifiedRelativeUncertainty = 2e-4;

    private const double MolarMassOfWater = 0.01801528;
    private const double GasConstant = 8.314472;
    private const double PascalsInMillimetreOfMercury = 133.322387;

    /// <summary>
    /// CIPM-2007: A. Picard, R. S. Davis, M. Gläser, K. Fujii, Metrologia 45 (2008) 149. Recommended for 600 hPa to
    /// 1100 hPa and 15 °C to 27 °C; a little outside it is still good to one part in ten thousand.
    /// </summary>
    /// <exception cref="ArgumentNullException"><paramref name="air"/> is null.</exception>
    public static double Cipm2007(AirState air)
    {
        ArgumentNullException.ThrowIfNull(air);
        double dryMolarMass = 0.02896546 + (0.012011 * (air.CarbonDioxideFraction - AirState.ReferenceCarbonDioxide));
        double vapour = VapourFraction(air);
        double ideal = air.PressureInPascals * dryMolarMass / (GasConstant * air.TemperatureInKelvins);
        return ideal / Compressibility(air, vapour) * (1 - (vapour * (1 - (MolarMassOfWater / dryMolarMass))));
    }

    /// <summary>
    /// The simplified formula of OIML R 111-1:2004, E.3, for 900 hPa to 1100 hPa, 10 °C to 30 °C and humidity below
    /// 80 %.
    /// </summary>
    /// <exception cref="ArgumentNullException"><paramref name="air"/> is null.</exception>
    public static double Simplified(AirState air)
    {
        ArgumentNullException.ThrowIfNull(air);
        double moist = 0.009 * (100 * air.RelativeHumidity) * Math.Exp(0.061 * air.TemperatureInCelsius);
        return ((0.34848 * air.PressureInPascals / 100) - moist) / air.TemperatureInKelvins;
    }

    /// <summary>
    /// F. E. Jones's formula of 1978 with the vapour pressure in closed form, as NIST SOP 2 uses it.
    /// </summary>
    /// <exception cref="ArgumentNullException"><paramref name="air"/> is null.</exception>
    public static double Jones1978(AirState air)
    {
        ArgumentNullException.ThrowIfNull(air);
        double kelvins = air.TemperatureInKelvins;
        double saturation = 1.3146e9 * Math.Exp(-5315.56 / kelvins);
        double pressure = air.PressureInPascals / PascalsInMillimetreOfMercury;
        return 0.46460 * (pressure - (0.0037960 * 100 * air.RelativeHumidity * saturation)) / kelvins;
    }

    /// <summary>Amount fraction of water vapour: humidity, enhancement factor and saturation pressure.</summary>
    private static double VapourFraction(AirState air)
    {
        double t = air.TemperatureInCelsius;
        double kelvins = air.TemperatureInKelvins;
        double saturation = Math.Exp(
            (1.2378847e-5 * kelvins * kelvins) - (1.9121316e-2 * kelvins) + 33.93711047 - (6.3431645e3 / kelvins));
        double enhancement = 1.00062 + (3.14e-8 * air.PressureInPascals) + (5.6e-7 * t * t);
        return air.RelativeHumidity * enhancement * saturation / air.PressureInPascals;
    }

    private static double Compressibility(AirState air, double vapour)
    {
        double t = air.TemperatureInCelsius;
        double ratio = air.PressureInPascals / air.TemperatureInKelvins;
        double first = 1.58123e-6 - (2.9331e-8 * t) + (1.1043e-10 * t * t)
            + ((5.707e-6 - (2.051e-8 * t)) * vapour)
            + ((1.9898e-4 - (2.376e-6 * t)) * vapour * vapour);
        return 1 - (ratio * first) + (ratio * ratio * (1.83e-11 - (0.765e-8 * vapour * vapour)));
    }
}
