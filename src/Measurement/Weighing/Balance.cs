using Calx.Measurement.Numbers;

namespace Calx.Measurement.Weighing;

/// <summary>
/// A balance: what it can show and how far a reading may lie from the mass on its pan. The law of one
/// reading: shown = round_d(mass + zero + linearity + noise), noise normal with standard deviation s, zero common to
/// every reading taken until the balance is zeroed again.
/// </summary>
public sealed class Balance
{
    /// <summary>Repeatability, in divisions, of a school balance in use by students: a judgement, no source.</summary>
    public const double UsualRepeatabilityInDivisions = 0.7;

    private readonly ScaleInterval step;

    /// <summary>Describes a balance.</summary>
    /// <param name="resolutionInGrams">The step d of the display, 1, 2 or 5 times a power of ten.</param>
    /// <param name="repeatabilityInDivisions">Standard deviation of repeated readings before rounding, over d.</param>
    /// <param name="linearityInGrams">Half-width of the error left after zero and span are right.</param>
    /// <param name="zeroStandardUncertaintyInGrams">Of the zero error that all readings share.</param>
    /// <exception cref="ArgumentOutOfRangeException">The resolution is no scale interval (ask
    /// <see cref="ScaleInterval.IsOne"/>), or another argument is negative or not finite.</exception>
    public Balance(
        double resolutionInGrams,
        double repeatabilityInDivisions = UsualRepeatabilityInDivisions,
        double linearityInGrams = 0,
        double zeroStandardUncertaintyInGrams = 0)
    {
        step = new ScaleInterval(resolutionInGrams);
        RepeatabilityInDivisions = NotNegative(repeatabilityInDivisions, nameof(repeatabilityInDivisions));
        LinearityInGrams = NotNegative(linearityInGrams, nameof(linearityInGrams));
        ZeroStandardUncertaintyInGrams =
            NotNegative(zeroStandardUncertaintyInGrams, nameof(zeroStandardUncertaintyInGrams));
    }

    /// <summary>The step of the display, d, in grams.</summary>
    public double ResolutionInGrams => step.Grams;

    /// <summary>How many decimals of a gram the display has.</summary>
    public int Decimals => step.Decimals;

    /// <summary>Standard deviation of repeated readings before rounding, in divisions.</summary>
    public double RepeatabilityInDivisions { get; }

    /// <summary>Standard deviation s of repeated readings before rounding, in grams.</summary>
    public double RepeatabilityInGrams => RepeatabilityInDivisions * ResolutionInGrams;

    /// <summary>Half-width in grams of the linearity error, taken as rectangular.</summary>
    public double LinearityInGrams { get; }

    /// <summary>Standard uncertainty in grams of the zero error that all readings share; it cancels in a difference.</summary>
    public double ZeroStandardUncertaintyInGrams { get; }

    /// <summary>
    /// Standard uncertainty in grams of one reading by itself, √(d²/12 + s²): rounding is rectangular over one division
    /// (JCGM 100:2008, F.2.2.1) and the noise comes before it. Zero error and linearity are not in it.
    /// </summary>
    public double ReadingStandardUncertainty() => Hypotenuse(
        ResolutionInGrams / Math.Sqrt(12), RepeatabilityInGrams);

    /// <summary>Standard uncertainty in grams of a mass read once against the true zero: reading, zero and linearity.</summary>
    public double MassStandardUncertainty() => Hypotenuse(
        Hypotenuse(ReadingStandardUncertainty(), ZeroStandardUncertaintyInGrams), LinearityInGrams / Math.Sqrt(3));

    /// <summary>
    /// Standard uncertainty in grams of the difference of two readings. The shared zero cancels; the linearity errors
    /// at the two loads are taken as independent, as QUAM:2012 example A2 does, which is cautious for close loads.
    /// </summary>
    public double DifferenceStandardUncertainty() => Math.Sqrt(2) * Hypotenuse(
        ReadingStandardUncertainty(), LinearityInGrams / Math.Sqrt(3));

    /// <summary>
    /// Natural logarithm of the probability that the balance shows this number when the mass on the pan, zero error
    /// included, is the one given; accurate far in the tails. The number alone counts: whether zeros at its end were
    /// written is a matter of the pen (<see cref="Check"/>). −∞ for a number between two steps, which cannot be shown.
    /// </summary>
    /// <param name="reading">The number as written, in grams.</param>
    /// <param name="trueMassInGrams">What the balance would show without noise and rounding.</param>
    /// <exception cref="ArgumentOutOfRangeException">The mass is not finite.</exception>
    public double LogProbabilityOfDigits(WrittenNumber reading, double trueMassInGrams) =>
        reading.Value % step.Exact == 0m
            ? LogProbabilityOfDigits(reading.AsDouble, trueMassInGrams)
            : double.NegativeInfinity;

    /// <summary>
    /// The same for a number that the caller knows to lie on a step, for use in loops.
    /// </summary>
    /// <exception cref="ArgumentOutOfRangeException">An argument is not finite.</exception>
    public double LogProbabilityOfDigits(double shownInGrams, double trueMassInGrams) =>
        RoundedNormal.LogProbability(shownInGrams, ResolutionInGrams, trueMassInGrams, RepeatabilityInGrams);

    /// <summary>The probability itself; 0 where it is below the smallest double or the number cannot be shown.</summary>
    /// <inheritdoc cref="LogProbabilityOfDigits(WrittenNumber, double)"/>
    public double ProbabilityOfDigits(WrittenNumber reading, double trueMassInGrams) =>
        Math.Exp(LogProbabilityOfDigits(reading, trueMassInGrams));

    /// <summary>
    /// The digits displayed for a signal, noise and zero error already added: the nearest step, halves away from zero
    /// (noise gives an exact half no probability), all decimals kept.
    /// </summary>
    /// <exception cref="ArgumentOutOfRangeException">The signal is not finite or beyond ± 10¹² steps.</exception>
    public WrittenNumber Display(double signalInGrams) => Displayed(StepsOf(signalInGrams));

    /// <summary>The same as a whole number of steps of the display, for use in loops.</summary>
    /// <inheritdoc cref="Display"/>
    public long StepsOf(double signalInGrams)
    {
        double steps = Math.Round(signalInGrams / ResolutionInGrams, MidpointRounding.AwayFromZero);
        return Math.Abs(steps) <= 1e12
            ? (long)steps
            : throw new ArgumentOutOfRangeException(nameof(signalInGrams), signalInGrams, "No balance shows so many digits.");
    }

    /// <summary>What the display shows at so many steps from zero.</summary>
    public WrittenNumber Displayed(long steps) => new(steps * step.Exact);

    /// <summary>Whether this balance can have shown the digits as written, and if not, why.</summary>
    public ReadingCheck Check(WrittenNumber reading)
    {
        if (reading.Decimals > Decimals)
        {
            return new ReadingCheck.TooManyDecimals(Decimals, $"{reading} has more decimals than the balance shows; {Shows()}");
        }

        if (reading.Value % step.Exact != 0m)
        {
            return new ReadingCheck.BetweenSteps(step.Exact, FormattableString.Invariant(
                $"{reading} is between two steps of the display, which goes by {step.Exact} g"));
        }

        return reading.Decimals < Decimals
            ? new ReadingCheck.ZerosNotWritten(Decimals, $"{reading} lacks zeros at its end; {Shows()}")
            : new ReadingCheck.Shown();
    }

    private string Shows() => Decimals switch
    {
        0 => "its display has no decimals",
        1 => "its display has 1 decimal",
        _ => FormattableString.Invariant($"its display has {Decimals} decimals"),
    };

    private static double NotNegative(double value, string name) => value >= 0 && double.IsFinite(value)
        ? value
        : throw new ArgumentOutOfRangeException(name, value, "0 or more is expected.");

    private static double Hypotenuse(double a, double b) => Math.Sqrt((a * a) + (b * b));
}
