using Calx.Measurement.Distributions;

namespace Calx.Measurement.Uncertainty;

/// <summary>An input quantity of a measurement model, with what is known of it as a distribution.</summary>
public sealed class ModelInput
{
    /// <summary>Names an input and its distribution.</summary>
    /// <param name="name">As the model's formula calls it.</param>
    /// <param name="distribution">In the input's own unit.</param>
    /// <exception cref="ArgumentException">The name is empty.</exception>
    public ModelInput(string name, InputDistribution distribution)
    {
        ArgumentException.ThrowIfNullOrWhiteSpace(name);
        ArgumentNullException.ThrowIfNull(distribution);
        Name = name;
        Distribution = distribution;
    }

    /// <summary>As the model's formula calls it.</summary>
    public string Name { get; }

    /// <summary>What is known of it.</summary>
    public InputDistribution Distribution { get; }

    /// <summary>
    /// The input for propagation by derivatives: estimate, standard uncertainty and degrees of freedom. A t
    /// distribution counts with its scale: the degrees of freedom carry what the scale leaves out (JCGM 100:2008, 4.2
    /// and G.3), and its standard deviation would count it twice.
    /// </summary>
    public UncertainInput ToUncertainInput()
        => new(Name, Distribution.Mean, Distribution.StandardUncertainty, Distribution.DegreesOfFreedom);
}
