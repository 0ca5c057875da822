using Calx.Chemistry.Elements;
using Calx.Chemistry.Formulas;
using Calx.Measurement.Expressions;
using Calx.Practicals.Definition;

namespace Calx.Practicals.Model.Faults;

/// <summary>A sum of readings with coefficients, in g. A repeated reading stands for its last weighing.</summary>
internal sealed class ReadingLine
{
    private readonly IReadOnlyDictionary<string, double> coefficients;

    private ReadingLine(IReadOnlyDictionary<string, double> coefficients) => this.coefficients = coefficients;

    /// <summary>The line of a formula that is linear in the readings.</summary>
    public static ReadingLine Of(Practical practical, Expression formula, AtomicWeights weights) =>
        new(practical.Readings.Where(r => r.Gauge is null).ToDictionary(
            r => r.Id,
            r => formula.Derivative(r.Id).Evaluate(
                _ => 0, molarMass => Formula.Parse(molarMass).Value.MolarMass(weights).Value),
            StringComparer.Ordinal));

    /// <summary>
    /// The difference by which a cause is judged to count: how far the change of mass lies from what the sample should
    /// give. The practical's own, or the change less what one gram of sample should change times the sample.
    /// </summary>
    public static ReadingLine KeyDifference(Practical practical, AtomicWeights weights, double changeOfOneGram)
    {
        if (practical.Findings.AsExpected?.Difference is Expression own)
        {
            return Of(practical, own, weights);
        }

        ReadingLine change = OfQuantity(practical, practical.Findings.Change, weights);
        ReadingLine sample = OfQuantity(practical, practical.Findings.Sample, weights);
        return new ReadingLine(change.coefficients.ToDictionary(
            c => c.Key, c => c.Value - (changeOfOneGram * sample.coefficients[c.Key]), StringComparer.Ordinal));
    }

    /// <summary>The line of a quantity that is linear in the readings.</summary>
    public static ReadingLine OfQuantity(Practical practical, string quantityId, AtomicWeights weights) =>
        Of(practical, practical.Quantities.First(q => q.Id == quantityId).Formula, weights);

    /// <summary>Its coefficient at each weighing of a walk: 0 where a later one of the same reading takes its place.</summary>
    public double[] At(IReadOnlyList<Weighing> weighings)
    {
        double[] result = new double[weighings.Count];
        for (int i = 0; i < result.Length; i++)
        {
            bool last = true;
            for (int j = i + 1; j < result.Length; j++)
            {
                last &= weighings[j].Reading != weighings[i].Reading;
            }

            result[i] = last ? coefficients[weighings[i].Reading] : 0;
        }

        return result;
    }
}
