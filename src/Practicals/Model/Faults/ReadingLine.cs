using Calx.Chemistry.Elements;
using Calx.Chemistry.Formulas;
using Calx.Measurement.Expressions;
using Calx.Practicals.Definition;

namespace Calx.Practicals.Model.Faults;

/// <summary>A sum of readings with coefficients, in g. A repeated reading stands for its last weighing. A formula that is no such
/// sum (a current times a time) is taken as straight about the middle of a group without faults.</summary>
internal sealed class ReadingLine
{
    private readonly IReadOnlyDictionary<string, double> coefficients;

    private ReadingLine(IReadOnlyDictionary<string, double> coefficients, double offset)
    {
        this.coefficients = coefficients;
        Offset = offset;
    }

    /// <summary>What is left where every reading is 0.</summary>
    public double Offset { get; }

    /// <summary>The line of a formula.</summary>
    /// <param name="practical">The practical.</param>
    /// <param name="formula">Over its readings.</param>
    /// <param name="weights">Atomic weights for the molar masses.</param>
    /// <param name="middle">The last value of each reading of a middling group.</param>
    public static ReadingLine Of(Practical practical, Expression formula, AtomicWeights weights, Func<string, double> middle)
    {
        Dictionary<string, double> slopes = practical.Readings.ToDictionary(
            r => r.Id, r => formula.Derivative(r.Id).Evaluate(middle, MolarMass), StringComparer.Ordinal);
        bool straight = formula.Names.All(name => formula.Derivative(name).Simplified().Names.Count == 0);
        double offset = straight ? 0 : formula.Evaluate(middle, MolarMass) - formula.Names.Sum(name => slopes[name] * middle(name));
        return new ReadingLine(slopes, offset);

        double MolarMass(string text) => Formula.Parse(text).Value.MolarMass(weights).Value;
    }

    /// <summary>
    /// The difference by which a cause is judged to count: how far the change of mass lies from what the sample should
    /// give. The practical's own, or the change less what one gram of sample should change times the sample.
    /// </summary>
    public static ReadingLine KeyDifference(Practical practical, AtomicWeights weights, double changeOfOneGram, Func<string, double> middle)
    {
        if (practical.Findings.AsExpected?.Difference is Expression own)
        {
            return Of(practical, own, weights, middle);
        }

        ReadingLine change = OfQuantity(practical, practical.Findings.Change, weights, middle);
        ReadingLine sample = OfQuantity(practical, practical.Findings.Sample, weights, middle);
        return new ReadingLine(
            change.coefficients.ToDictionary(c => c.Key, c => c.Value - (changeOfOneGram * sample.coefficients[c.Key]), StringComparer.Ordinal),
            change.Offset - (changeOfOneGram * sample.Offset));
    }

    /// <summary>The line of a quantity.</summary>
    public static ReadingLine OfQuantity(Practical practical, string quantityId, AtomicWeights weights, Func<string, double> middle) =>
        Of(practical, practical.Quantities.First(q => q.Id == quantityId).Formula, weights, middle);

    /// <summary>Its coefficient at each reading of a walk: 0 where a later one of the same reading takes its place.</summary>
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
