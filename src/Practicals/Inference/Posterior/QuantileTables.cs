using Calx.Practicals.Definition;
using Calx.Practicals.Model.Faults;

namespace Calx.Practicals.Inference.Posterior;

/// <summary>Quantiles of the laws at the middles of equal shares, worked out once: evenly spread points fall into the shares
/// and take their middles.</summary>
internal sealed class QuantileTables
{
    /// <summary>Shares into which a law is cut. The last middle leaves out one group in two thousand.</summary>
    public const int Shares = 1024;

    private readonly Dictionary<ParameterLaw, double[]> tables = [];

    /// <summary>The middle of the share that a number falls into.</summary>
    /// <param name="law">The law.</param>
    /// <param name="even">From 0 up to but not 1.</param>
    public double Of(ParameterLaw law, double even)
    {
        if (law is ParameterLaw.Fixed known)
        {
            return known.Value;
        }

        if (!tables.TryGetValue(law, out double[]? table))
        {
            table = new double[Shares];
            for (int i = 0; i < Shares; i++)
            {
                table[i] = LawQuantile.Of(law, (i + 0.5) / Shares);
            }

            tables[law] = table;
        }

        return table[(int)(even * Shares)];
    }
}
