namespace Calx.Practicals.Definition;

/// <summary>How long a step takes.</summary>
public sealed class StepMinutes(double least, double likely, double most)
{
    /// <summary>Least time in min, from 0.</summary>
    public double Least { get; } = least;

    /// <summary>Likeliest time in min.</summary>
    public double Likely { get; } = likely;

    /// <summary>Longest time in min.</summary>
    public double Most { get; } = most;
}
