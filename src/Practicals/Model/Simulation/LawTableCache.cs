using System.Collections.Concurrent;
using Calx.Measurement.Distributions;
using Calx.Practicals.Definition;
using Calx.Practicals.Model.Faults;

namespace Calx.Practicals.Model.Simulation;

/// <summary>Tables of quantiles by their laws, worked out once for all plans that are compared. Safe for several threads.</summary>
internal sealed class LawTableCache
{
    private readonly ConcurrentDictionary<ParameterLaw, QuantileTable> tables = new();

    /// <summary>The table of a law.</summary>
    public QuantileTable Of(ParameterLaw law) => tables.GetOrAdd(law, l => new QuantileTable(p => LawQuantile.Of(l, p)));
}
