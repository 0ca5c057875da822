using Calx.Practicals.Definition;
using Calx.Practicals.Model.Faults;

namespace Calx.Practicals.Model.Simulation;

/// <summary>
/// Quantiles fast enough to draw a million numbers. Laws whose quantile has no closed form are worked out once at evenly
/// spaced shares and joined by straight lines; the outer sixty-fourths are exact, so that the tails stay as they are. Safe
/// for several threads.
/// </summary>
internal sealed class LawTables
{
    private const int Shares = 1024;
    private const int Tail = Shares / 64;

    private readonly Dictionary<ParameterLaw, Lazy<double[]>> tables = [];

    /// <summary>Takes a class's laws; a table is worked out when it is first needed.</summary>
    public LawTables(Circumstances circumstances)
    {
        for (int p = 0; p < circumstances.Practical.Parameters.Count; p++)
        {
            Prepare(circumstances.LawOf(p));
        }

        foreach (FaultDefinition fault in circumstances.Practical.Faults)
        {
            Prepare(fault.Effect);
        }
    }

    /// <summary>The same as <see cref="LawQuantile.Of"/>.</summary>
    /// <param name="law">A law of the practical, or any law with a quantile in closed form.</param>
    /// <param name="p">Above 0 and below 1.</param>
    public double Of(ParameterLaw law, double p)
    {
        if (law is ParameterLaw.Mixture mixture)
        {
            return Of(mixture, p);
        }

        if (law is not (ParameterLaw.Beta or ParameterLaw.Gamma) || !tables.TryGetValue(law, out Lazy<double[]>? lazy))
        {
            return LawQuantile.Of(law, p);
        }

        double place = p * Shares;
        int share = (int)place;
        if (share < Tail || share >= Shares - Tail)
        {
            return LawQuantile.Of(law, p);
        }

        double[] table = lazy.Value;
        double low = table[share - Tail];
        return low + ((place - share) * (table[share - Tail + 1] - low));
    }

    private double Of(ParameterLaw.Mixture mixture, double p)
    {
        (ParameterLaw law, double within) = LawQuantile.Component(mixture, p);
        return Of(law, within);
    }

    private void Prepare(FaultEffect effect)
    {
        switch (effect)
        {
            case FaultEffect.Set set:
                foreach (ParameterSetting setting in set.Settings)
                {
                    Prepare(setting.Law);
                }

                break;
            case FaultEffect.Warm warm:
                Prepare(warm.ExcessInKelvin);
                Prepare(warm.MilligramsPerKelvin);
                break;
            case FaultEffect.Gain gain:
                Prepare(gain.Mass);
                break;
            case FaultEffect.Zero zero:
                Prepare(zero.ShiftInGrams);
                break;
            default:
                break;
        }
    }

    private void Prepare(ParameterLaw law)
    {
        if (law is ParameterLaw.Mixture mixture)
        {
            foreach (MixtureComponent component in mixture.Components)
            {
                Prepare(component.Law);
            }
        }
        else if (law is ParameterLaw.Beta or ParameterLaw.Gamma)
        {
            tables[law] = new Lazy<double[]>(() => Table(law));
        }
    }

    private static double[] Table(ParameterLaw law)
    {
        double[] table = new double[Shares - (2 * Tail) + 1];
        for (int i = 0; i < table.Length; i++)
        {
            table[i] = LawQuantile.Of(law, (double)(Tail + i) / Shares);
        }

        return table;
    }
}
