namespace Calx.Practicals.Definition;

/// <summary>How a number differs from group to group. Every case is checked before it is made.</summary>
public abstract record ParameterLaw
{
    private ParameterLaw()
    {
    }

    /// <summary>The same number for all groups.</summary>
    /// <param name="Value">The number.</param>
    public sealed record Fixed(double Value) : ParameterLaw;

    /// <summary>Normal.</summary>
    /// <param name="Mean">Mean.</param>
    /// <param name="StandardDeviation">Standard deviation, above 0.</param>
    public sealed record Normal(double Mean, double StandardDeviation) : ParameterLaw;

    /// <summary>Every number between two ends equally likely.</summary>
    /// <param name="Low">Lower end.</param>
    /// <param name="High">Upper end, above the lower.</param>
    public sealed record Rectangular(double Low, double High) : ParameterLaw;

    /// <summary>Triangular.</summary>
    /// <param name="Low">Lower end.</param>
    /// <param name="Mode">The likeliest number, from end to end.</param>
    /// <param name="High">Upper end, above the lower.</param>
    public sealed record Triangular(double Low, double Mode, double High) : ParameterLaw;

    /// <summary>Beta stretched between two ends.</summary>
    /// <param name="A">First shape, above 0.</param>
    /// <param name="B">Second shape, above 0.</param>
    /// <param name="Low">Lower end.</param>
    /// <param name="High">Upper end, above the lower.</param>
    public sealed record Beta(double A, double B, double Low, double High) : ParameterLaw;

    /// <summary>Exponential from 0 up.</summary>
    /// <param name="Mean">Mean, above 0.</param>
    public sealed record Exponential(double Mean) : ParameterLaw;

    /// <summary>Lognormal.</summary>
    /// <param name="Median">Median, above 0.</param>
    /// <param name="SigmaLn">Standard deviation of the natural logarithm, above 0.</param>
    public sealed record Lognormal(double Median, double SigmaLn) : ParameterLaw;

    /// <summary>Gamma from 0 up.</summary>
    /// <param name="Shape">Shape, above 0.</param>
    /// <param name="Scale">Scale, above 0; the mean is shape times scale.</param>
    public sealed record Gamma(double Shape, double Scale) : ParameterLaw;

    /// <summary>Some groups follow one law, some another.</summary>
    /// <param name="Components">At least two; their shares are above 0 and add up to 1.</param>
    public sealed record Mixture(IReadOnlyList<MixtureComponent> Components) : ParameterLaw;
}
