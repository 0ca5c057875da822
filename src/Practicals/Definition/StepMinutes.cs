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

    /// <summary>Mean time in min, (least + 4 likely + most) / 6 (D. G. Malcolm et al., Operations Research 7 (1959) 646).</summary>
    public double Mean => (Least + (4 * Likely) + Most) / 6;

    /// <summary>All three times the same factor, above 0.</summary>
    public StepMinutes Times(double factor) => new(factor * Least, factor * Likely, factor * Most);
}
