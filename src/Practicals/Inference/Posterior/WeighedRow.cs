namespace Calx.Practicals.Inference.Posterior;

/// <summary>One number that a group wrote down, as a sum of weighings of the walk: a reading is one of them, a mass already
/// subtracted is two with opposite signs.</summary>
/// <param name="id">Id of the reading or column.</param>
/// <param name="weighings">Which weighings, with their coefficients.</param>
/// <param name="grams">The number, in g.</param>
/// <param name="divisionInGrams">Step of the balance.</param>
/// <param name="noiseInGrams">Standard deviation of one weighing before rounding.</param>
/// <param name="tared">A difference read on a balance set to zero: one rounding, though two weighings.</param>
/// <param name="weighed">Whether a balance took it; the numbers of another instrument are in its unit instead of g.</param>
internal sealed class WeighedRow(
    string id,
    IReadOnlyList<(int Weighing, double Coefficient)> weighings,
    double grams,
    double divisionInGrams,
    double noiseInGrams,
    bool tared,
    bool weighed = true)
{
    private readonly (int Weighing, double Coefficient)[] places = [.. weighings];

    /// <summary>Id of the reading or column.</summary>
    public string Id { get; } = id;

    /// <summary>Which weighings of the walk, with their coefficients.</summary>
    public IReadOnlyList<(int Weighing, double Coefficient)> Weighings => places;

    /// <summary>The same for a loop that is run millions of times.</summary>
    public ReadOnlySpan<(int Weighing, double Coefficient)> Places => places;

    /// <summary>The number in g.</summary>
    public double Grams { get; } = grams;

    /// <summary>Step of the balance in g.</summary>
    public double DivisionInGrams { get; } = divisionInGrams;

    /// <summary>Standard deviation before rounding, in g.</summary>
    public double NoiseInGrams { get; } = noiseInGrams;

    /// <summary>Whether it is a single reading, not a mass already subtracted: a slip of the pen can befall it.</summary>
    public bool IsReading { get; } = weighings.Count == 1;

    /// <summary>Whether a balance took it. Its rounding is then known exactly; that of other instruments is taken as normal, with
    /// the variance that it has.</summary>
    public bool IsWeighed { get; } = weighed;

    /// <summary>Variance of noise and rounding together, in g².</summary>
    public double Variance { get; } =
        ((noiseInGrams * noiseInGrams) + (divisionInGrams * divisionInGrams / 12))
        * (tared ? 1 : weighings.Sum(w => w.Coefficient * w.Coefficient));
}
