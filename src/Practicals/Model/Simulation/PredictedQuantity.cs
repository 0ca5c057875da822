using Calx.Practicals.Definition;

namespace Calx.Practicals.Model.Simulation;

/// <summary>Where a quantity of the practical will probably lie.</summary>
public sealed class PredictedQuantity
{
    internal PredictedQuantity(QuantityDefinition quantity, PredictedValue? value)
    {
        Quantity = quantity;
        Value = value;
    }

    /// <summary>Which quantity.</summary>
    public QuantityDefinition Quantity { get; }

    /// <summary>What the groups find; null where weighings alone do not give it.</summary>
    public PredictedValue? Value { get; }
}
