using Calx.Practicals.Definition;

namespace Calx.Practicals.Inference;

/// <summary>A quantity that the readings do not determine, with what would.</summary>
public sealed class MissingReadings
{
    internal MissingReadings(QuantityDefinition quantity, IReadOnlyList<ReadingDefinition> readings)
    {
        Quantity = quantity;
        Readings = readings;
    }

    /// <summary>The quantity.</summary>
    public QuantityDefinition Quantity { get; }

    /// <summary>The fewest readings of the practical that would determine it together with those taken; empty where not
    /// even all of them would.</summary>
    public IReadOnlyList<ReadingDefinition> Readings { get; }

    /// <summary>Why the quantity cannot be found, for the teacher.</summary>
    public string Why
    {
        get
        {
            string names = string.Join(" and ", Readings.Select(r => $"'{r.Label}'"));
            return Readings.Count == 0
                ? $"The readings of this practical do not determine the {Quantity.Label}."
                : $"The {Quantity.Label} cannot be found: the table lacks the reading{(Readings.Count == 1 ? string.Empty : "s")} {names}.";
        }
    }
}
