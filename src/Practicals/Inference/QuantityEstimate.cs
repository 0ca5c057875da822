using Calx.Measurement.Numbers;
using Calx.Measurement.Uncertainty;
using Calx.Practicals.Definition;
using Calx.Practicals.Texts;

namespace Calx.Practicals.Inference;

/// <summary>What one group's readings say about one quantity. A closed set: it was found, or it was not and why.</summary>
public abstract record QuantityResult
{
    private protected QuantityResult(QuantityDefinition quantity) => Quantity = quantity;

    /// <summary>The quantity asked for.</summary>
    public QuantityDefinition Quantity { get; }
}

/// <summary>The quantity could not be found from the group's readings.</summary>
public sealed record QuantityNotFound : QuantityResult
{
    internal QuantityNotFound(QuantityDefinition quantity, string reason)
        : base(quantity) => Reason = reason;

    /// <summary>Why, in one sentence for the teacher.</summary>
    public string Reason { get; }
}

/// <summary>The quantity with its uncertainty, as far as the balance goes: what went wrong on the bench is not in it.</summary>
public sealed record QuantityEstimate : QuantityResult
{
    /// <summary>Why <see cref="Interval"/> may be null, for the teacher.</summary>
    /// <param name="language">In which language.</param>
    public static string NoInterval(EngineLanguage language) => new QuantityTexts(language).NoInterval;

    internal QuantityEstimate(
        QuantityDefinition quantity,
        double value,
        double standardUncertainty,
        CoverageInterval? interval,
        IReadOnlyList<ReadingContribution> budget,
        int decimals)
        : base(quantity)
    {
        Value = value;
        StandardUncertainty = standardUncertainty;
        Interval = interval;
        Budget = budget;
        Decimals = decimals;
    }

    /// <summary>In the quantity's unit.</summary>
    public double Value { get; }

    /// <summary>First-order standard uncertainty from readings and molar masses (JCGM 100:2008, 5.1.2), in the same unit.</summary>
    public double StandardUncertainty { get; }

    /// <summary>95 % interval, or null where a divisor may be zero within it: the sample is too small for the balance.
    /// Not symmetric unless the formula is straight (docs/methods/intervals.md).</summary>
    public CoverageInterval? Interval { get; }

    /// <summary>What each reading, and the molar masses together, contribute; in the order of the readings.</summary>
    public IReadOnlyList<ReadingContribution> Budget { get; }

    /// <summary>Decimals that the readings allow when the value is shown.</summary>
    public int Decimals { get; }

    /// <summary>The value and its standard uncertainty as shown to a person, without the unit.</summary>
    public string Text => $"{Figures.Text(Value, Decimals)} ± {Figures.Text(StandardUncertainty, Decimals)}";
}

/// <summary>The part of a quantity's uncertainty that comes from one reading.</summary>
public sealed record ReadingContribution
{
    internal ReadingContribution(string source, double sensitivity, double contribution, double share)
    {
        Source = source;
        Sensitivity = sensitivity;
        Contribution = contribution;
        Share = share;
    }

    /// <summary>Id of the reading, <see cref="MolarMasses"/>, or what an instrument is out by (<see cref="InstrumentOf"/>, <see cref="ScaleOf"/>).</summary>
    public string Source { get; }

    /// <summary>Change of the quantity for a change of the reading by 1 of its unit; 0 for the molar masses.</summary>
    public double Sensitivity { get; }

    /// <summary>|sensitivity| times the reading's standard uncertainty, in the quantity's unit.</summary>
    public double Contribution { get; }

    /// <summary>Share of the variance, 0 to 1; the shares of a budget sum to 1.</summary>
    public double Share { get; }

    /// <summary>The source under which is listed what an instrument other than a balance is out by.</summary>
    public static string InstrumentOf(string gauge) => $"instrument of {gauge}";

    /// <summary>The source under which is listed by how much its scale is too wide or too narrow.</summary>
    public static string ScaleOf(string gauge) => $"scale of {gauge}";

    /// <summary>The source under which the molar masses' part is listed.</summary>
    public const string MolarMasses = "molar masses";
}
