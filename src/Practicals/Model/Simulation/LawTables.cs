using Calx.Measurement.Distributions;
using Calx.Practicals.Definition;
using Calx.Practicals.Model.Faults;

namespace Calx.Practicals.Model.Simulation;

/// <summary>Quantiles of a practical's laws, fast enough to draw a million numbers. Safe for several threads.</summary>
internal sealed class LawTables
{
    private readonly LawTableCache cache;
    private readonly Dictionary<ParameterLaw, QuantileTable> tables = [];

    /// <summary>Takes a class's laws; a table is worked out when it is first needed.</summary>
    public LawTables(Circumstances circumstances, LawTableCache cache)
    {
        this.cache = cache;
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
            (ParameterLaw component, double within) = LawQuantile.Component(mixture, p);
            return Of(component, within);
        }

        return law is ParameterLaw.Beta or ParameterLaw.Gamma && tables.TryGetValue(law, out QuantileTable? table)
            ? table.At(p)
            : LawQuantile.Of(law, p);
    }

    /// <summary>The same for one law, looked up once.</summary>
    public Func<double, double> Quantile(ParameterLaw law) => law switch
    {
        ParameterLaw.Fixed { Value: double value } => _ => value,
        ParameterLaw.Mixture => p => Of(law, p),
        ParameterLaw.Beta or ParameterLaw.Gamma when tables.TryGetValue(law, out QuantileTable? table) => table.At,
        _ => p => LawQuantile.Of(law, p),
    };

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
            tables[law] = cache.Of(law);
        }
    }
}
