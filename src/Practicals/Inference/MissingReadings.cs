using Calx.Practicals.Definition;
using Calx.Practicals.Texts;

namespace Calx.Practicals.Inference;

/// <summary>A quantity that the readings do not determine, with what would.</summary>
public sealed class MissingReadings
{
    internal MissingReadings(QuantityDefinition quantity, IReadOnlyList<ReadingDefinition> readings, EngineLanguage language)
    {
        Quantity = quantity;
        Readings = readings;
        Why = Reason(new QuantityTexts(language), new Wording(language));
    }

    /// <summary>The quantity.</summary>
    public QuantityDefinition Quantity { get; }

    /// <summary>The fewest readings of the practical that would determine it together with those taken; empty where not
    /// even all of them would.</summary>
    public IReadOnlyList<ReadingDefinition> Readings { get; }

    /// <summary>Why the quantity cannot be found, for the teacher.</summary>
    public string Why { get; }

    private string Reason(QuantityTexts texts, Wording wording)
    {
        string names = wording.AllAnd([.. Readings.Select(r => wording.Quoted(r.Label))]);
        return Readings.Count switch
        {
            0 => texts.NotDetermined(Quantity.Label),
            1 => texts.LacksReading(Quantity.Label, names),
            _ => texts.LacksReadings(Quantity.Label, names),
        };
    }
}
