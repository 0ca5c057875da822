using Calx.Measurement.Statistics.Series;
using Calx.Measurement.Uncertainty;
using Calx.Practicals.Definition;

namespace Calx.Practicals.Inference;

/// <summary>What one group's mass against time shows.</summary>
public sealed class GroupCurve
{
    internal GroupCurve(
        TimeSeries? series,
        FittedCurve? fit,
        string? reason,
        IReadOnlyList<CurveQuantity> quantities,
        OrderVerdict order,
        IReadOnlyList<Disturbance> disturbances)
    {
        (Series, Fit, Reason, Quantities, Order, Disturbances) = (series, fit, reason, quantities, order, disturbances);
    }

    /// <summary>The points, or null where they make no series.</summary>
    public TimeSeries? Series { get; }

    /// <summary>The curve of the practical's order, or null where the points determine none.</summary>
    public FittedCurve? Fit { get; }

    /// <summary>Why there is no curve, a sentence; null where there is one.</summary>
    public string? Reason { get; }

    /// <summary>Every quantity of the curve that the practical asks for, in its order.</summary>
    public IReadOnlyList<CurveQuantity> Quantities { get; }

    /// <summary>What the points say of the order.</summary>
    public OrderVerdict Order { get; }

    /// <summary>Points that do not follow the others.</summary>
    public IReadOnlyList<Disturbance> Disturbances { get; }

    /// <summary>A quantity that was found, or null.</summary>
    public CurveQuantity? Find(string id) => Quantities.FirstOrDefault(q => q.Quantity.Id == id && q.Value is not null);
}

/// <summary>One quantity of one group's curve.</summary>
/// <param name="Quantity">Which.</param>
/// <param name="Value">Its value in its unit, or null where there is none.</param>
/// <param name="StandardUncertainty">Its standard uncertainty.</param>
/// <param name="Interval">95 %.</param>
/// <param name="Reason">Why there is none, a sentence; null where there is one.</param>
public sealed record CurveQuantity(
    CurveQuantityDefinition Quantity, double? Value, double? StandardUncertainty, CoverageInterval? Interval, string? Reason)
{
    /// <summary>Value and standard uncertainty as shown to a person, without the unit; null where there is none.</summary>
    public string? Text => Value is double value && StandardUncertainty is double u ? Measurement.Numbers.Figures.WithUncertainty(value, u) : null;
}
