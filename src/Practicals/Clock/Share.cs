namespace Calx.Practicals.Clock;

/// <summary>A probability counted in simulations.</summary>
/// <param name="Value">0 to 1.</param>
/// <param name="StandardError">How far chance in the simulation may move it: one standard deviation. Never quite 0, since what did
/// not happen in so many simulations may still happen.</param>
public readonly record struct Share(double Value, double StandardError)
{
    /// <summary>From so many of so many.</summary>
    /// <exception cref="ArgumentOutOfRangeException">There are none, or more than all.</exception>
    public static Share Of(int count, int among)
    {
        ArgumentOutOfRangeException.ThrowIfLessThan(among, 1);
        ArgumentOutOfRangeException.ThrowIfNegative(count);
        ArgumentOutOfRangeException.ThrowIfGreaterThan(count, among);
        // Two of each kind added (A. Agresti and B. A. Coull, The American Statistician 52 (1998) 119), for the error alone.
        double p = (count + 2.0) / (among + 4.0);
        return new Share((double)count / among, Math.Sqrt(p * (1 - p) / (among + 4)));
    }
}
