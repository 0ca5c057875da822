namespace Calx.Measurement.Weighing;

/// <summary>How far the conventional mass of a check weight may lie from its nominal mass, by its class.</summary>
public abstract record WeightTolerance
{
    private WeightTolerance()
    {
    }

    /// <summary>
    /// Looks the limit up in OIML R 111-1:2004, Table 1, from 1 mg to 1 kg.
    /// </summary>
    /// <param name="weightClass">The weight's class.</param>
    /// <param name="nominalInGrams">Its nominal mass in grams: 1, 2 or 5 times a power of ten.</param>
    public static WeightTolerance Of(WeightClass weightClass, double nominalInGrams)
    {
        double? milligrams = WeightTable.LimitInMilligrams(weightClass, nominalInGrams);
        return milligrams is { } limit
            ? new Limit(limit / 1000)
            : new NotDefined(FormattableString.Invariant(
                $"class {weightClass} has no limit for a weight of {nominalInGrams} g in the table from 1 mg to 1 kg"));
    }

    /// <summary>The class has a limit at this nominal mass.</summary>
    /// <param name="MaximumPermissibleErrorInGrams">The limit, plus or minus, in grams.</param>
    public sealed record Limit(double MaximumPermissibleErrorInGrams) : WeightTolerance
    {
        /// <summary>
        /// Standard uncertainty in grams of a weight of which nothing but the class is known: rectangular between the
        /// limits, limit/√3 (JCGM 100:2008, 4.3.7).
        /// </summary>
        public double StandardUncertaintyInGrams => MaximumPermissibleErrorInGrams / Math.Sqrt(3);
    }

    /// <summary>The class is not defined at this nominal mass.</summary>
    /// <param name="Reason">What is missing, for a person.</param>
    public sealed record NotDefined(string Reason) : WeightTolerance;
}
