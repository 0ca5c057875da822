using System.Diagnostics;

namespace Calx.Measurement.Statistics.Series;

/// <summary>
/// The share of a change that is over after a time, for the three orders. All are written with the half-life T, the time in
/// which half of the change goes by, so that their parameters mean the same.
/// </summary>
internal static class CurveShape
{
    private const double Ln2 = 0.69314718055994530942;

    /// <summary>The share that is over; 0 before the start.</summary>
    public static double Gone(KineticOrder order, double elapsed, double halfLife)
    {
        if (elapsed <= 0)
        {
            return 0;
        }

        double x = elapsed / halfLife;
        return order switch
        {
            KineticOrder.Zeroth => Math.Min(1, x / 2),
            KineticOrder.First => 1 - Math.Exp(-Ln2 * x),
            KineticOrder.Second => x / (1 + x),
            _ => throw new UnreachableException(),
        };
    }

    /// <summary>Its derivative by time.</summary>
    public static double Speed(KineticOrder order, double elapsed, double halfLife)
    {
        if (elapsed < 0)
        {
            return 0;
        }

        double x = elapsed / halfLife;
        return order switch
        {
            KineticOrder.Zeroth => x < 2 ? 0.5 / halfLife : 0,
            KineticOrder.First => Ln2 / halfLife * Math.Exp(-Ln2 * x),
            KineticOrder.Second => 1 / (halfLife * (1 + x) * (1 + x)),
            _ => throw new UnreachableException(),
        };
    }

    /// <summary>Its derivative by the logarithm of the half-life: time and half-life only matter as their ratio.</summary>
    public static double ByLogHalfLife(KineticOrder order, double elapsed, double halfLife) =>
        elapsed <= 0 ? 0 : -elapsed * Speed(order, elapsed, halfLife);

    /// <summary>The share that goes by in one half-life at the speed of the start.</summary>
    public static double FirstSpeed(KineticOrder order) => Speed(order, 0, 1);

    /// <summary>
    /// What was there in all for each unit that left, where the first part stayed in the vessel for the time of the lag. What
    /// is left follows the same law from the start on, so this runs the law backwards from the end of the lag.
    /// </summary>
    /// <returns>+∞ where the law has no such past.</returns>
    public static double WholeBeforeLag(KineticOrder order, double lag, double halfLife)
    {
        double x = lag / halfLife;
        return order switch
        {
            KineticOrder.Zeroth => 1 + (x / 2),
            KineticOrder.First => Math.Exp(Ln2 * x),
            KineticOrder.Second => x < 1 ? 1 / (1 - x) : double.PositiveInfinity,
            _ => throw new UnreachableException(),
        };
    }

    /// <summary>The rate at the start of the change over the rate at which the readings begin to move: the power of the
    /// whole amount that the order says.</summary>
    public static double FasterBeforeLag(KineticOrder order, double wholeBefore) => order switch
    {
        KineticOrder.Zeroth => 1,
        KineticOrder.First => wholeBefore,
        KineticOrder.Second => wholeBefore * wholeBefore,
        _ => throw new UnreachableException(),
    };
}
