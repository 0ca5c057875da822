using Calx.Measurement.Numbers;
using Calx.Measurement.Weighing;
using Calx.Practicals.Definition;

namespace Calx.Practicals.Model.Simulation;

/// <summary>What a reading is taken with: how far it scatters, and what digits it shows; in the unit of the reading.</summary>
internal sealed class ReadingDisplay
{
    /// <summary>More than this no instrument shows.</summary>
    private const double MostSteps = 1e12;

    private readonly ScaleInterval step;
    private readonly double stepsInOne;

    /// <summary>Takes a reading's instrument: its own, or the lesson's balance.</summary>
    public ReadingDisplay(ReadingDefinition reading, Balance balance)
    {
        step = reading.Errors?.Step ?? new ScaleInterval(balance.ResolutionInGrams);
        stepsInOne = 1 / step.Grams;
        Spread = reading.Errors?.Spread ?? balance.RepeatabilityInGrams;
        Tolerance = reading.Errors?.Tolerance ?? 0;
        ScaleTolerance = reading.Errors?.ScaleTolerance ?? 0;
    }

    /// <summary>Standard deviation of repeated readings before rounding.</summary>
    public double Spread { get; }

    /// <summary>Half width of the shift that a group's readings share.</summary>
    public double Tolerance { get; }

    /// <summary>Half width of the share by which its scale is too wide or too narrow.</summary>
    public double ScaleTolerance { get; }

    /// <summary>A signal in whole steps of the display: the nearest, halves away from zero.</summary>
    /// <exception cref="ArgumentOutOfRangeException">The signal is not finite or far beyond any display.</exception>
    public long StepsOf(double signal)
    {
        double steps = Math.Round(signal / step.Grams, MidpointRounding.AwayFromZero);
        return Math.Abs(steps) <= MostSteps
            ? (long)steps
            : throw new ArgumentOutOfRangeException(nameof(signal), signal, "No instrument shows so many digits.");
    }

    /// <summary>What it shows at so many steps from zero.</summary>
    public WrittenNumber Displayed(long steps) => new(steps * step.Exact);

    /// <summary>The same as a double.</summary>
    public double ValueOf(long steps) => steps / stepsInOne;
}
