namespace Calx.Measurement.Weighing;

/// <summary>
/// The classes that a balance's maximum capacity and verification scale interval admit (OIML R 76-1:2006, 3.2,
/// Table 3). The plate names the one that was approved; several may be admissible.
/// </summary>
public static class BalanceClassification
{
    /// <summary>
    /// One admissible class.
    /// </summary>
    /// <param name="Class">The class.</param>
    /// <param name="MinimumCapacityInGrams">The load below which the relative error may be excessive, in grams.</param>
    public readonly record struct Admissible(BalanceClass Class, double MinimumCapacityInGrams);

    // Class, smallest and largest e in g, least and most intervals n = Max/e, minimum capacity in e.
    private static readonly (BalanceClass Class, double From, double To, double Least, double Most, int Minimum)[] Rows =
    [
        (BalanceClass.I, 0.001, double.PositiveInfinity, 50_000, double.PositiveInfinity, 100),
        (BalanceClass.II, 0.001, 0.05, 100, 100_000, 20),
        (BalanceClass.II, 0.1, double.PositiveInfinity, 5_000, 100_000, 50),
        (BalanceClass.III, 0.1, 2, 100, 10_000, 20),
        (BalanceClass.III, 5, double.PositiveInfinity, 500, 10_000, 20),
        (BalanceClass.IIII, 5, double.PositiveInfinity, 100, 1_000, 10),
    ];

    /// <summary>Every admissible class, the finest first; none where no class admits such a balance.</summary>
    /// <param name="capacityInGrams">Maximum capacity Max, in grams, above 0.</param>
    /// <param name="intervalInGrams">Verification scale interval e, in grams, above 0.</param>
    /// <exception cref="ArgumentOutOfRangeException">An argument is not above 0 or not finite.</exception>
    public static IReadOnlyList<Admissible> Of(double capacityInGrams, double intervalInGrams)
    {
        ArgumentOutOfRangeException.ThrowIfNegativeOrZero(capacityInGrams);
        ArgumentOutOfRangeException.ThrowIfNegativeOrZero(intervalInGrams);
        if (!double.IsFinite(capacityInGrams / intervalInGrams))
        {
            throw new ArgumentOutOfRangeException(nameof(capacityInGrams), "Capacity over interval must be finite.");
        }

        const double slack = 1e-9;
        double n = capacityInGrams / intervalInGrams;
        return [.. Rows
            .Where(row => intervalInGrams >= row.From * (1 - slack) && intervalInGrams <= row.To * (1 + slack)
                && n >= row.Least * (1 - slack) && n <= row.Most * (1 + slack))
            .Select(row => new Admissible(row.Class, row.Minimum * intervalInGrams))];
    }
}
