namespace Calx.Measurement.Weighing;

/// <summary>The air of the room in which a balance stands.</summary>
public sealed class AirState
{
    /// <summary>Amount fraction of carbon dioxide that CIPM-2007 was written for.</summary>
    public const double ReferenceCarbonDioxide = 0.0004;

    /// <summary>Describes the air.</summary>
    /// <param name="temperatureInCelsius">Temperature in °C, −20 to 60.</param>
    /// <param name="pressureInPascals">Pressure in Pa at the balance (not reduced to sea level), 30 kPa to 120 kPa.</param>
    /// <param name="relativeHumidity">Relative humidity as a fraction, 0 to 1.</param>
    /// <param name="carbonDioxideFraction">Amount fraction of carbon dioxide, 0 to 0.05; a full classroom reaches
    /// 0.002 to 0.005.</param>
    /// <exception cref="ArgumentOutOfRangeException">An argument is outside its range.</exception>
    public AirState(
        double temperatureInCelsius,
        double pressureInPascals,
        double relativeHumidity,
        double carbonDioxideFraction = ReferenceCarbonDioxide)
    {
        TemperatureInCelsius = Within(temperatureInCelsius, -20, 60, nameof(temperatureInCelsius));
        PressureInPascals = Within(pressureInPascals, 30_000, 120_000, nameof(pressureInPascals));
        RelativeHumidity = Within(relativeHumidity, 0, 1, nameof(relativeHumidity));
        CarbonDioxideFraction = Within(carbonDioxideFraction, 0, 0.05, nameof(carbonDioxideFraction));
    }

    /// <summary>Temperature in °C.</summary>
    public double TemperatureInCelsius { get; }

    /// <summary>Temperature in K.</summary>
    public double TemperatureInKelvins => TemperatureInCelsius + 273.15;

    /// <summary>Pressure in Pa.</summary>
    public double PressureInPascals { get; }

    /// <summary>Relative humidity as a fraction.</summary>
    public double RelativeHumidity { get; }

    /// <summary>Amount fraction of carbon dioxide.</summary>
    public double CarbonDioxideFraction { get; }

    private static double Within(double value, double low, double high, string name) => value >= low && value <= high
        ? value
        : throw new ArgumentOutOfRangeException(name, value, FormattableString.Invariant($"{low} to {high} is expected."));
}
