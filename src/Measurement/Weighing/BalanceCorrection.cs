using Calx.Measurement.Uncertainty;

namespace Calx.Measurement.Weighing;

/// <summary>
/// What check weights tell of a balance's error (shown minus true): a shift of the zero, and where weights of at least
/// two masses were put on, an error in proportion to the load. Estimated by least squares, each weighing counted by
/// its uncertainty.
/// </summary>
/// <remarks>The weights' errors are taken as independent, which weights of one set seldom are entirely.</remarks>
public sealed class BalanceCorrection
{
    private BalanceCorrection(UncertainValue zeroShift, UncertainValue spanError, double chiSquared, int degreesOfFreedom)
    {
        ZeroShift = zeroShift;
        SpanError = spanError;
        ChiSquared = chiSquared;
        DegreesOfFreedom = degreesOfFreedom;
    }

    /// <summary>Error at no load, in grams; the mean error where only one mass was put on.</summary>
    public UncertainValue ZeroShift { get; }

    /// <summary>Error in proportion to the load, in grams per gram; exactly 0 where it could not be found.</summary>
    public UncertainValue SpanError { get; }

    /// <summary>Sum of the squared residuals over their variances: about <see cref="DegreesOfFreedom"/> where shift
    /// and span explain the errors, much larger where the balance is not linear or was moved.</summary>
    public double ChiSquared { get; }

    /// <summary>Weighings less the numbers estimated; 0 where nothing is left to check them by.</summary>
    public int DegreesOfFreedom { get; }

    /// <summary>
    /// Probability of residuals at least as large as these where shift and span are all there is: small values speak
    /// against that. 1 where nothing is left to check.
    /// </summary>
    public double ResidualProbability =>
        DegreesOfFreedom == 0 ? 1 : Distributions.ChiSquared.UpperTail(ChiSquared, DegreesOfFreedom);

    /// <summary>Estimates the error from the lines of a certificate.</summary>
    /// <param name="balance">The balance, whose reading uncertainty counts with the weights'.</param>
    /// <param name="weighings">At least one weighing.</param>
    /// <exception cref="ArgumentException">There is no weighing.</exception>
    public static BalanceCorrection From(Balance balance, IReadOnlyList<CheckWeighing> weighings)
    {
        ArgumentNullException.ThrowIfNull(balance);
        ArgumentNullException.ThrowIfNull(weighings);
        if (weighings.Count == 0)
        {
            throw new ArgumentException("A certificate has at least one weighing.", nameof(weighings));
        }

        double[] loads = [.. weighings.Select(weighing => weighing.Mass.Value)];
        UncertainValue[] errors = [.. weighings.Select((weighing, i) => Error(balance, weighing, i))];
        double[] weights = [.. errors.Select(error => 1 / (error.StandardUncertainty * error.StandardUncertainty))];
        bool oneLoad = loads.All(load => load == loads[0]);
        double centre = loads.Zip(weights, (load, weight) => load * weight).Sum() / weights.Sum();
        UncertainValue mean = Weighted(errors, weights, weights.Sum());
        UncertainValue span = oneLoad ? UncertainValue.Exact(0) : Span(loads, errors, weights, centre);
        UncertainValue shift = mean - (centre * span);
        double chiSquared = errors.Select((error, i) =>
            weights[i] * Math.Pow(error.Value - shift.Value - (span.Value * loads[i]), 2)).Sum();
        return new BalanceCorrection(shift, span, chiSquared, loads.Length - (oneLoad ? 1 : 2));
    }

    /// <summary>The error at a load, in grams: what a reading is too high by. Take it from the reading.</summary>
    /// <exception cref="ArgumentOutOfRangeException">The load is not finite.</exception>
    public UncertainValue ErrorAt(double loadInGrams) => ZeroShift + (loadInGrams * SpanError);

    private static UncertainValue Error(Balance balance, CheckWeighing weighing, int index) =>
        UncertainValue.Of(
            FormattableString.Invariant($"reading {index + 1} of the check"),
            weighing.Indicated.AsDouble,
            balance.ReadingStandardUncertainty()) - weighing.Mass;

    private static UncertainValue Span(double[] loads, UncertainValue[] errors, double[] weights, double centre)
    {
        double[] lever = [.. loads.Select((load, i) => weights[i] * (load - centre))];
        return Weighted(errors, lever, loads.Select((load, i) => lever[i] * (load - centre)).Sum());
    }

    private static UncertainValue Weighted(UncertainValue[] values, double[] weights, double divisor) =>
        UncertainValue.LinearCombination(values, Array.ConvertAll(weights, weight => weight / divisor));
}
