using System.Collections.Concurrent;

namespace Calx.Practicals.Inference.Posterior;

/// <summary>The rounding tables of the balances in use.</summary>
internal sealed class RoundingRatios
{
    private readonly ConcurrentDictionary<(double Division, double Noise), RoundingRatio> tables = new();

    /// <summary>The table of a balance.</summary>
    public RoundingRatio Of(double divisionInGrams, double noiseInGrams) =>
        tables.GetOrAdd((divisionInGrams, noiseInGrams), b => new RoundingRatio(b.Division, b.Noise));
}
