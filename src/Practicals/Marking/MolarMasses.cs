using Calx.Chemistry.Elements;
using Calx.Chemistry.Formulas;

namespace Calx.Practicals.Marking;

/// <summary>Molar masses by one set of atomic weights, each worked out once.</summary>
/// <param name="weights">The set.</param>
internal sealed class MolarMasses(AtomicWeights weights)
{
    private readonly Dictionary<string, double> known = new(StringComparer.Ordinal);

    /// <summary>In g/mol; not a number where the formula cannot be read or an element has no weight in the set.</summary>
    public double Of(string formula)
    {
        lock (known)
        {
            if (!known.TryGetValue(formula, out double molarMass))
            {
                molarMass = Formula.Parse(formula) is { Succeeded: true } read && read.Value!.FindMolarMass(weights) is { Succeeded: true } found ? found.Value!.Value : double.NaN;
                known.Add(formula, molarMass);
            }

            return molarMass;
        }
    }
}
