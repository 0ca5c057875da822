using Calx.Chemistry.Elements;
using Calx.Chemistry.Formulas;
using Calx.Measurement.Expressions;
using Calx.Measurement.Uncertainty;
using Calx.Practicals.Definition;
using Calx.Practicals.Model;

namespace Calx.Papers.Handouts.Cover;

/// <summary>
/// What students work out from a group's readings, once unrounded, and once as many of them do it: with the molar masses of the sheet, and
/// every answer rounded before it is used further on. Both are right, and so is what lies between them.
/// </summary>
/// <param name="practical">The practical.</param>
/// <param name="weights">Atomic weights.</param>
/// <param name="decimals">Decimals of the balance.</param>
internal sealed class CoverAnswers(Practical practical, AtomicWeights weights, int decimals)
{
    /// <summary>The molar masses that stand on sheets have one decimal.</summary>
    private const int OfMolarMasses = 1;

    private readonly Dictionary<string, double> molarMasses = practical.Answers.SelectMany(a => a.Formula.MolarMasses).Distinct()
        .ToDictionary(f => f, f => Formula.Parse(f).Value!.MolarMass(weights).Value, StringComparer.Ordinal);

    /// <summary>The answers that the readings give, in the practical's order.</summary>
    public IReadOnlyList<CoverAnswer> Of(IReadOnlyDictionary<Weighing, decimal> readings)
    {
        var known = new Dictionary<string, double>(StringComparer.Ordinal);
        foreach ((Weighing weighing, decimal value) in readings.OrderBy(r => r.Key.Occurrence))
        {
            known[weighing.Reading] = (double)value;
        }

        var rounded = new Dictionary<string, double>(known, StringComparer.Ordinal);
        var answers = new List<CoverAnswer>();
        foreach (AnswerDefinition answer in practical.Answers.Where(a => a.Formula.Names.All(known.ContainsKey)))
        {
            try
            {
                double exact = answer.Formula.Evaluate(name => known[name], formula => molarMasses[formula]);
                double onTheWay = answer.Formula.Evaluate(name => rounded[name], formula => Math.Round(molarMasses[formula], OfMolarMasses));
                int? places = AnswerFigures.Decimals(answer, exact, decimals, practical);
                known[answer.Id] = exact;
                rounded[answer.Id] = places is int digits ? Math.Round(onTheWay, digits, MidpointRounding.AwayFromZero) : onTheWay;
                answers.Add(Accepted(answer, exact, onTheWay, places));
            }
            catch (UndefinedResultException)
            {
                // Masses that cancel have no quotient, and nothing follows from it.
            }
        }

        return answers;
    }

    /// <summary>A step of the last figure on either side: common practice in marking, no source.</summary>
    private CoverAnswer Accepted(AnswerDefinition answer, double exact, double onTheWay, int? places)
    {
        bool isDifference = answer.Formula.Nodes.All(n => n is NameTerm or BinaryOperation { Operator: Operator.Add or Operator.Subtract });
        if (isDifference)
        {
            double value = Math.Round(exact, decimals);
            return new CoverAnswer(answer, exact, value, value, decimals);
        }

        double step = Math.Pow(10, -(places ?? 0));
        return new CoverAnswer(answer, exact, Math.Min(exact, onTheWay) - step, Math.Max(exact, onTheWay) + step, places);
    }
}
