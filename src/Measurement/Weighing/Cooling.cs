namespace Calx.Measurement.Weighing;

/// <summary>How long a vessel takes to cool, and how warm it is after a time.</summary>
public static class Cooling
{
    // In the logarithm of the excess the time constant is nearly a straight line, so few steps are many digits.
    private const int Steps = 200;

    // Forward in time the first minute is the steep one: a step lasts a twentieth of a time constant, but a vessel left
    // for days, whose time constant no longer changes, is not followed for ever.
    private const double StepInTimeConstants = 0.05;
    private const double MostSteps = 2000;

    /// <summary>
    /// Minutes for the excess to fall from one value to another: ∫ τ d ln(excess), by Simpson's rule.
    /// </summary>
    /// <param name="law">How the vessel loses heat.</param>
    /// <param name="fromExcessInKelvins">Temperature above the room's at the start, in K, above 0.</param>
    /// <param name="toExcessInKelvins">At the end; 0 minutes are needed where it is not below the start.</param>
    /// <param name="roomInCelsius">Temperature of the room, in °C.</param>
    /// <exception cref="ArgumentOutOfRangeException">An excess is not above 0: cooling to the room takes for ever.</exception>
    public static double MinutesBetween(
        CoolingLaw law, double fromExcessInKelvins, double toExcessInKelvins, double roomInCelsius = 20)
    {
        ArgumentNullException.ThrowIfNull(law);
        ArgumentOutOfRangeException.ThrowIfNegativeOrZero(fromExcessInKelvins);
        ArgumentOutOfRangeException.ThrowIfNegativeOrZero(toExcessInKelvins);
        double high = Math.Log(fromExcessInKelvins);
        double low = Math.Log(toExcessInKelvins);
        if (low >= high)
        {
            return 0;
        }

        double step = (high - low) / Steps;
        double sum = 0;
        for (int i = 0; i <= Steps; i++)
        {
            int weight = i is 0 or Steps ? 1 : i % 2 == 0 ? 2 : 4;
            sum += weight * law.TimeConstantInSeconds(Math.Exp(low + (i * step)), roomInCelsius);
        }

        return sum * step / 3 / 60;
    }

    /// <summary>
    /// Temperature excess in kelvins after a time, by the classical Runge–Kutta rule in ln(excess), whose
    /// steps are a twentieth of the momentary time constant.
    /// </summary>
    /// <param name="law">How the vessel loses heat.</param>
    /// <param name="fromExcessInKelvins">Temperature above the room's at the start, in K, above 0.</param>
    /// <param name="minutes">Time gone, 0 or more.</param>
    /// <param name="roomInCelsius">Temperature of the room, in °C.</param>
    /// <exception cref="ArgumentOutOfRangeException">The excess is not above 0 or the time is negative.</exception>
    public static double ExcessAfter(CoolingLaw law, double fromExcessInKelvins, double minutes, double roomInCelsius = 20)
    {
        ArgumentNullException.ThrowIfNull(law);
        ArgumentOutOfRangeException.ThrowIfNegativeOrZero(fromExcessInKelvins);
        ArgumentOutOfRangeException.ThrowIfNegative(minutes);
        double log = Math.Log(fromExcessInKelvins);
        double seconds = minutes * 60;
        for (double left = seconds; left > 0;)
        {
            double step = Math.Min(left, Math.Max(-StepInTimeConstants / Slope(log), seconds / MostSteps));
            log = Advance(log, step);
            left -= step;
        }

        return Math.Exp(log);

        double Advance(double from, double step)
        {
            double first = Slope(from);
            double second = Slope(from + (step / 2 * first));
            double third = Slope(from + (step / 2 * second));
            double fourth = Slope(from + (step * third));
            return from + (step / 6 * (first + (2 * (second + third)) + fourth));
        }

        double Slope(double logExcess) => -1 / law.TimeConstantInSeconds(Math.Exp(logExcess), roomInCelsius);
    }
}
