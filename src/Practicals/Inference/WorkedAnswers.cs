using Calx.Chemistry.Elements;
using Calx.Chemistry.Formulas;
using Calx.Measurement.Uncertainty;
using Calx.Practicals.Definition;

namespace Calx.Practicals.Inference;

/// <summary>Works a practical's answers out from a group's readings, one after another, as a student does.</summary>
/// <param name="practical">The practical.</param>
/// <param name="weights">Atomic weights for the molar masses.</param>
internal sealed class WorkedAnswers(Practical practical, AtomicWeights weights)
{
    private readonly Dictionary<string, double> molarMasses = practical.Answers.SelectMany(a => a.Formula.MolarMasses).Distinct()
        .ToDictionary(f => f, f => Formula.Parse(f).Value!.MolarMass(weights).Value, StringComparer.Ordinal);

    /// <summary>What can be worked out from readings, by the id of the answer; the readings are among it.</summary>
    /// <param name="readings">By id; a repeated one is its last weighing.</param>
    /// <param name="step">What becomes of an answer before a later one uses it; null leaves it unrounded.</param>
    /// <param name="molarMass">What becomes of a molar mass in g/mol; null leaves it unrounded.</param>
    public Dictionary<string, double> Of(
        IReadOnlyDictionary<string, double> readings, Func<AnswerDefinition, double, double>? step = null, Func<double, double>? molarMass = null)
    {
        var known = new Dictionary<string, double>(readings, StringComparer.Ordinal);
        foreach (AnswerDefinition answer in practical.Answers.Where(a => a.Formula.Names.All(known.ContainsKey)))
        {
            try
            {
                double value = answer.Formula.Evaluate(name => known[name], formula => molarMass?.Invoke(molarMasses[formula]) ?? molarMasses[formula]);
                known[answer.Id] = step?.Invoke(answer, value) ?? value;
            }
            catch (UndefinedResultException)
            {
                // A group whose masses cancel has no such answer.
            }
        }

        return known;
    }
}
