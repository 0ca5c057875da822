namespace Calx.Measurement.Uncertainty;

/// <summary>
/// An input quantity of a measurement: its estimate with its standard uncertainty (JCGM 100:2008, 4.1.4). Its identity
/// is the object itself: two inputs with the same name and numbers are two independent quantities.
/// </summary>
public sealed class UncertainInput
{
    /// <summary>Describes one input quantity.</summary>
    /// <param name="name">What a budget calls it, for instance <c>mass of the empty crucible</c>.</param>
    /// <param name="value">The estimate, in the quantity's own unit.</param>
    /// <param name="standardUncertainty">Its standard uncertainty (not expanded), in the same unit, at least 0.</param>
    /// <param name="degreesOfFreedom">How well the uncertainty is known, above 0; +∞ where it is taken as exact
    /// (JCGM 100:2008, G.3).</param>
    /// <exception cref="ArgumentException">The name is empty, or a number is outside its range or not finite.</exception>
    public UncertainInput(
        string name, double value, double standardUncertainty, double degreesOfFreedom = double.PositiveInfinity)
    {
        ArgumentException.ThrowIfNullOrWhiteSpace(name);
        if (!double.IsFinite(value))
        {
            throw new ArgumentOutOfRangeException(nameof(value), value, "An estimate is a finite number.");
        }

        if (!double.IsFinite(standardUncertainty) || standardUncertainty < 0)
        {
            throw new ArgumentOutOfRangeException(
                nameof(standardUncertainty), standardUncertainty, "A standard uncertainty is finite and at least 0.");
        }

        if (!(degreesOfFreedom > 0))
        {
            throw new ArgumentOutOfRangeException(
                nameof(degreesOfFreedom), degreesOfFreedom, "Degrees of freedom are above 0.");
        }

        Name = name;
        Value = value;
        StandardUncertainty = standardUncertainty;
        DegreesOfFreedom = degreesOfFreedom;
    }

    /// <summary>What a budget calls it.</summary>
    public string Name { get; }

    /// <summary>The estimate, in the quantity's own unit.</summary>
    public double Value { get; }

    /// <summary>Its standard uncertainty, in the same unit.</summary>
    public double StandardUncertainty { get; }

    /// <summary>Degrees of freedom of the standard uncertainty; +∞ where it is taken as exact.</summary>
    public double DegreesOfFreedom { get; }
}
