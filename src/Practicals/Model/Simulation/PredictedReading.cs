using Calx.Practicals.Definition;

namespace Calx.Practicals.Model.Simulation;

/// <summary>Where a weighing will probably lie.</summary>
public sealed class PredictedReading
{
    internal PredictedReading(Weighing weighing, string label, ReadingDefinition reading, PredictedValue written, PredictedValue? withoutParts, double typicalPartsInGrams)
    {
        Weighing = weighing;
        Label = label;
        Unit = reading.Unit;
        Decimals = reading.Errors?.Step.Decimals;
        Written = written;
        WithoutParts = withoutParts;
        Typical = withoutParts is null ? written.Median : typicalPartsInGrams + withoutParts.Median;
    }

    /// <summary>Which weighing.</summary>
    public Weighing Weighing { get; }

    /// <summary>Its name for people.</summary>
    public string Label { get; }

    /// <summary>Its unit.</summary>
    public string Unit { get; }

    /// <summary>Decimals that its instrument shows; null for a weighing, where the balance says it.</summary>
    public int? Decimals { get; }

    /// <summary>The number written down.</summary>
    public PredictedValue Written { get; }

    /// <summary>The reading of a group whose parts have the median mass and hold the median contents. Medians of the readings
    /// themselves wander by a tenth of a gram with the vessels drawn; these follow each other as in one group.</summary>
    public double Typical { get; }

    /// <summary>The number written down less the true masses of the group's own parts on the pan, which differ more from group to group than
    /// what is in them; null where no part is on the pan.</summary>
    public PredictedValue? WithoutParts { get; }
}
