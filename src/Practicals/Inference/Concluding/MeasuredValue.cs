namespace Calx.Practicals.Inference.Concluding;

/// <summary>A quantity as one group finds it.</summary>
/// <param name="Value">In the quantity's unit; not finite where the readings give none, such as a division by nothing.</param>
/// <param name="StandardUncertainty">What the balance leaves open, to first order (JCGM 100:2008, 5.1.2).</param>
public readonly record struct MeasuredValue(double Value, double StandardUncertainty)
{
    /// <summary>Whether there is a value.</summary>
    public bool IsFound => double.IsFinite(Value) && double.IsFinite(StandardUncertainty);
}
