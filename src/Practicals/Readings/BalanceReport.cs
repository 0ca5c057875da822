using Calx.Measurement.Weighing;
using Calx.Practicals.Definition;
using Calx.Practicals.Texts;

namespace Calx.Practicals.Readings;

/// <summary>The resolution and repeatability that the findings stand on, and where each came from.</summary>
public sealed class BalanceReport
{
    /// <summary>Repeatability in divisions of the balance where none is given: judgement, no source.</summary>
    public const double DefaultRepeatabilityInDivisions = 0.7;

    /// <summary>Resolution in g where no readings show one: a two-decimal school balance, judgement.</summary>
    public const decimal DefaultResolutionInGrams = 0.01m;

    private readonly IReadOnlyDictionary<string, decimal> byReading;
    private readonly IReadOnlyDictionary<string, decimal> byGauge;

    /// <summary>Of a balance that is known.</summary>
    public static BalanceReport Of(Balance balance)
    {
        ArgumentNullException.ThrowIfNull(balance);
        return new BalanceReport(new BalanceOptions((decimal)balance.ResolutionInGrams, balance.RepeatabilityInGrams), new Dictionary<string, decimal>());
    }

    /// <summary>Takes the resolution found in the readings and what the teacher said.</summary>
    /// <param name="options">What the teacher said.</param>
    /// <param name="foundInGrams">The step of the last digit by base id of the reading; empty where no reading was
    /// taken.</param>
    /// <param name="foundOnGauges">The same of readings that are no weighings, in their units; null where none was taken.</param>
    public BalanceReport(
        BalanceOptions options, IReadOnlyDictionary<string, decimal> foundInGrams, IReadOnlyDictionary<string, decimal>? foundOnGauges = null)
    {
        byGauge = foundOnGauges ?? new Dictionary<string, decimal>();
        ArgumentNullException.ThrowIfNull(options);
        ArgumentNullException.ThrowIfNull(foundInGrams);
        byReading = options.ResolutionInGrams is null ? foundInGrams : new Dictionary<string, decimal>();
        ResolutionOrigin = options.ResolutionInGrams is not null ? BalanceOrigin.Given
            : foundInGrams.Count > 0 ? BalanceOrigin.MostDecimals : BalanceOrigin.Judgement;
        ResolutionInGrams = options.ResolutionInGrams
            ?? (foundInGrams.Count > 0 ? foundInGrams.Values.Min() : DefaultResolutionInGrams);
        RepeatabilityOrigin = options.RepeatabilityInGrams is null ? BalanceOrigin.Judgement : BalanceOrigin.Given;
        RepeatabilityInGrams = options.RepeatabilityInGrams
            ?? DefaultRepeatabilityInDivisions * (double)ResolutionInGrams;
    }

    /// <summary>The smallest step in g; the finest, where columns differ.</summary>
    public decimal ResolutionInGrams { get; }

    /// <summary>Where the resolution came from.</summary>
    public BalanceOrigin ResolutionOrigin { get; }

    /// <summary>Standard deviation of repeated weighings of one thing, in g.</summary>
    public double RepeatabilityInGrams { get; }

    /// <summary>The same in steps of the balance.</summary>
    public double RepeatabilityInDivisions => RepeatabilityInGrams / (double)ResolutionInGrams;

    /// <summary>Where the repeatability came from.</summary>
    public BalanceOrigin RepeatabilityOrigin { get; }

    /// <summary>The smallest step for one reading of the practical, where its column shows another than the rest.</summary>
    /// <param name="baseId">Id of the practical's reading, without the number of a repeat.</param>
    public decimal ResolutionOf(string baseId) => byReading.GetValueOrDefault(baseId, ResolutionInGrams);

    /// <summary>The smallest step of a reading, in its unit: that of the balance, or of the instrument that shows the gauge as far as
    /// it was written down.</summary>
    public decimal ResolutionOf(ReadingDefinition reading)
    {
        ArgumentNullException.ThrowIfNull(reading);
        return reading.Errors is InstrumentErrors errors ? byGauge.GetValueOrDefault(reading.Id, errors.Step.Exact) : ResolutionOf(reading.Id);
    }

    /// <summary>The balance assumed and where its figures came from, one sentence for the teacher.</summary>
    /// <param name="language">In which language.</param>
    public string SentenceIn(EngineLanguage language)
    {
        var texts = new ClassFileTexts(language);
        string resolution = ResolutionOrigin switch
        {
            BalanceOrigin.Given => texts.AsGiven,
            BalanceOrigin.MostDecimals => texts.FromMostDecimals,
            _ => texts.Assumed,
        };
        string repeatability = RepeatabilityOrigin == BalanceOrigin.Given ? texts.AsGiven : texts.Judgement;
        return texts.BalanceOf(ResolutionInGrams.InFigures(), resolution, RepeatabilityInGrams.InFigures("0.#####"), repeatability);
    }
}
