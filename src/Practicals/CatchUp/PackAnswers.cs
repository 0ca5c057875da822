using Calx.Chemistry.Elements;
using Calx.Chemistry.Formulas;
using Calx.Measurement.Expressions;
using Calx.Measurement.Uncertainty;
using Calx.Practicals.Definition;
using Calx.Practicals.Inference;

namespace Calx.Practicals.CatchUp;

/// <summary>
/// The answers that follow from a student's own readings, and between which values a right working lies: molar masses unrounded, to one
/// decimal or whole, and each step kept as it is or rounded to three or to two significant figures. A difference of readings is exact.
/// </summary>
internal sealed class PackAnswers(Practical practical, AtomicWeights weights)
{
    /// <summary>Fewest figures that a step may be rounded to (judgement).</summary>
    private const int FewestFigures = 2;

    private static readonly Func<double, double>[] MolarMasses = [m => m, m => Math.Round(m, 1, MidpointRounding.AwayFromZero), m => Math.Round(m, MidpointRounding.AwayFromZero)];

    private readonly WorkedAnswers worked = new(practical, weights);
    private readonly Dictionary<string, double> molarMasses = practical.Quantities.SelectMany(q => q.Formula.MolarMasses).Distinct()
        .ToDictionary(f => f, f => Formula.Parse(f).Value!.MolarMass(weights).Value, StringComparer.Ordinal);

    /// <summary>The answers, for one who stops after each heating.</summary>
    public IReadOnlyList<PackAnswer> Of(IReadOnlyList<PackReading> readings)
    {
        int heatings = readings.Max(r => r.Weighing.Occurrence);
        return [.. Enumerable.Range(1, heatings).SelectMany(h => After(h, Last(readings, h, r => r.Displayed.AsDouble)))];
    }

    /// <summary>The quantities as the true masses give them.</summary>
    public IReadOnlyList<(QuantityDefinition Quantity, double? Value)> TrueValuesOf(IReadOnlyList<PackReading> readings)
    {
        Dictionary<string, double> known = Last(readings, int.MaxValue, r => r.TrueMassInGrams);
        return [.. practical.Quantities.Select(q => (q, Value(q)))];

        double? Value(QuantityDefinition quantity)
        {
            try
            {
                return quantity.Formula.Names.All(known.ContainsKey) ? quantity.Formula.Evaluate(name => known[name], f => molarMasses[f]) : null;
            }
            catch (UndefinedResultException)
            {
                return null;
            }
        }
    }

    private IEnumerable<PackAnswer> After(int heating, Dictionary<string, double> readings)
    {
        Dictionary<string, double> exact = worked.Of(readings);
        Dictionary<string, double>[] rounded =
        [
            .. from mass in MolarMasses from figures in (int?[])[null, FewestFigures + 1, FewestFigures]
               select worked.Of(readings, (answer, value) => IsDifference(answer) || figures is not int some ? value : ToFigures(value, some), mass),
        ];
        foreach (AnswerDefinition answer in practical.Answers.Where(a => exact.ContainsKey(a.Id)))
        {
            double[] values = [exact[answer.Id], .. rounded.Where(r => r.ContainsKey(answer.Id)).Select(r => r[answer.Id])];
            yield return new PackAnswer(heating, answer, exact[answer.Id], values.Min(), values.Max());
        }
    }

    /// <summary>By id, a repeated reading by its last weighing up to a heating.</summary>
    private static Dictionary<string, double> Last(IReadOnlyList<PackReading> readings, int heating, Func<PackReading, double> value)
    {
        var last = new Dictionary<string, double>(StringComparer.Ordinal);
        foreach (PackReading reading in readings.Where(r => r.Weighing.Occurrence <= heating))
        {
            last[reading.Weighing.Reading] = value(reading);
        }

        return last;
    }

    private bool IsDifference(AnswerDefinition answer) => answer.Formula.Nodes.All(
        n => n is BinaryOperation { Operator: Operator.Add or Operator.Subtract } || (n is NameTerm name && practical.Readings.Any(r => r.Id == name.Name)));

    private static double ToFigures(double value, int figures)
    {
        if (value == 0)
        {
            return 0;
        }

        double unit = Math.Pow(10, Math.Floor(Math.Log10(Math.Abs(value))) - figures + 1);
        return Math.Round(value / unit, MidpointRounding.AwayFromZero) * unit;
    }
}
