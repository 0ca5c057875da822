namespace Calx.Measurement.Weighing;

/// <summary>
/// How far a verified balance's reading may lie from the load, by its class and the number of verification scale
/// intervals e in the load (OIML R 76-1:2006, 3.5.1, Table 6). e is marked on the plate; on many balances e = 10 d.
/// </summary>
public abstract record BalanceTolerance
{
    // Upper ends of the first, second and third zone of Table 6 in intervals e; the third of class I has no end.
    private static readonly double[][] ZoneEnds =
    [
        [50_000, 200_000, double.PositiveInfinity],
        [5_000, 20_000, 100_000],
        [500, 2_000, 10_000],
        [50, 200, 1_000],
    ];

    private BalanceTolerance()
    {
    }

    /// <summary>Looks the limit up for a load.</summary>
    /// <param name="balanceClass">The balance's class.</param>
    /// <param name="loadInGrams">The load, in grams.</param>
    /// <param name="intervalInGrams">The verification scale interval e, in grams, above 0.</param>
    /// <param name="inService">In use between verifications, where twice the limit of the initial verification is
    /// allowed (3.5.2); false for the verification itself.</param>
    /// <exception cref="ArgumentOutOfRangeException">The interval is not above 0 or the load is not finite.</exception>
    public static BalanceTolerance Of(
        BalanceClass balanceClass, double loadInGrams, double intervalInGrams, bool inService = true)
    {
        ArgumentOutOfRangeException.ThrowIfNegativeOrZero(intervalInGrams);
        if (!double.IsFinite(loadInGrams) || !double.IsFinite(intervalInGrams))
        {
            throw new ArgumentOutOfRangeException(nameof(loadInGrams), "Load and interval must be finite.");
        }

        // A load such as 5 g over 0.001 g must count as exactly 5000 intervals, the end of its zone.
        double intervals = Math.Abs(loadInGrams) / intervalInGrams * (1 - 1e-12);
        int zone = Array.FindIndex(ZoneEnds[(int)balanceClass], end => intervals <= end);
        if (zone < 0)
        {
            return new BeyondClass(FormattableString.Invariant(
                $"{loadInGrams} g is more than a class {balanceClass} balance with e = {intervalInGrams} g can have"));
        }

        return new Limit((zone + 1) * 0.5 * intervalInGrams * (inService ? 2 : 1));
    }

    /// <summary>The load lies in the class's range.</summary>
    /// <param name="MaximumPermissibleErrorInGrams">The limit, plus or minus, in grams.</param>
    public sealed record Limit(double MaximumPermissibleErrorInGrams) : BalanceTolerance
    {
        /// <summary>Standard uncertainty in grams of a reading known only to be within the limits: limit/√3.</summary>
        public double StandardUncertaintyInGrams => MaximumPermissibleErrorInGrams / Math.Sqrt(3);
    }

    /// <summary>The load has more intervals than the class allows.</summary>
    /// <param name="Reason">What is wrong, for a person.</param>
    public sealed record BeyondClass(string Reason) : BalanceTolerance;
}
