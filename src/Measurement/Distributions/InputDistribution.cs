namespace Calx.Measurement.Distributions;

/// <summary>
/// What is known of an input quantity, as a probability distribution (JCGM 101:2008, 6.4). A closed set of laws; each
/// is immutable and may be shared by threads.
/// </summary>
public abstract class InputDistribution
{
    private protected InputDistribution()
    {
    }

    /// <summary>The expectation, in the unit of the quantity: the estimate that goes into a model.</summary>
    public abstract double Mean { get; }

    /// <summary>The standard deviation of the draws, in the unit of the quantity; +∞ for a t distribution with two
    /// degrees of freedom or fewer.</summary>
    public abstract double StandardDeviation { get; }

    /// <summary>
    /// The standard uncertainty that the law of propagation takes (JCGM 100:2008, 4.2 and 4.3). It is the standard
    /// deviation, but for a t distribution, where it is s/√n, to be taken together with the degrees of freedom.
    /// </summary>
    public virtual double StandardUncertainty => StandardDeviation;

    /// <summary>Degrees of freedom of the standard uncertainty; +∞ but for a t distribution.</summary>
    public virtual double DegreesOfFreedom => double.PositiveInfinity;

    /// <summary>The next draw.</summary>
    /// <param name="stream">Where the random numbers come from.</param>
    public abstract double Draw(RandomStream stream);

    /// <summary>Fills a block with draws, the same that <see cref="Draw"/> would give one by one.</summary>
    /// <param name="stream">Where the random numbers come from.</param>
    /// <param name="values">Receives the draws.</param>
    public virtual void Fill(RandomStream stream, Span<double> values)
    {
        ArgumentNullException.ThrowIfNull(stream);
        for (int i = 0; i < values.Length; i++)
        {
            values[i] = Draw(stream);
        }
    }
}
