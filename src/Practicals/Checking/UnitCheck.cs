using Calx.Measurement.Expressions;
using Calx.Practicals.Definition;

namespace Calx.Practicals.Checking;

/// <summary>A balance is read in g, and so is what is a plain sum or difference of its readings: with another unit behind it every
/// number on paper would be wrong by a factor.</summary>
internal sealed class UnitCheck(Practical practical, FilePlaces places)
{
    private const string Gram = "g";

    /// <summary>Weighings in another unit.</summary>
    public IEnumerable<CheckFinding> OfReadings()
    {
        for (int i = 0; i < practical.Readings.Count; i++)
        {
            ReadingDefinition reading = practical.Readings[i];
            if (reading.IsWeighing && reading.Unit != Gram)
            {
                yield return CheckFinding.At(
                    places.Of("readings", i, "unit"),
                    $"'{reading.Id}' is read from the balance in '{reading.Unit}', but every weighing is taken to be in g",
                    "write 'unit: g'");
            }
        }
    }

    /// <summary>Quantities and answers that are masses and say something else.</summary>
    public IEnumerable<CheckFinding> OfFormulas()
    {
        HashSet<string> masses = [.. practical.Readings.Where(r => r.IsWeighing).Select(r => r.Id)];
        foreach (QuantityDefinition quantity in practical.Quantities.Where(q => q.Unit != Gram && IsSum(q.Formula, masses)))
        {
            yield return Wrong(quantity.At, quantity.Id, quantity.Unit, quantity.Formula);
        }

        // Each answer may use those before it.
        foreach (AnswerDefinition answer in practical.Answers.Concat(practical.FurtherAnswers.OfType<AnswerDefinition>()).Where(a => IsSum(a.Formula, masses)))
        {
            masses.Add(answer.Id);
            if (answer.Unit != Gram)
            {
                yield return Wrong(answer.At, answer.Id, answer.Unit, answer.Formula);
            }
        }
    }

    /// <summary>Units that nobody knows: a slip of the pen on every sheet.</summary>
    public IEnumerable<CheckFinding> OfNames()
    {
        (string List, IEnumerable<string> Units)[] lists =
        [
            ("quantities", practical.Quantities.Select(q => q.Unit)), ("answers", practical.Answers.Select(a => a.Unit)), ("gauges", practical.Gauges.Select(g => g.Unit)),
        ];
        foreach ((string list, IEnumerable<string> units) in lists)
        {
            int i = 0;
            foreach (string unit in units)
            {
                FilePosition at = places.Of(list, i++, "unit");
                if (KnownUnits.Unknown(unit) is string part)
                {
                    yield return CheckFinding.At(
                        at,
                        $"'{part}' is no unit that is known here",
                        KnownUnits.Meant(part) is string meant ? $"did you mean {meant}? A plain number or ratio has unit: '1'" : "write one such as g, mol, cm³, kJ/mol or %; a plain number or ratio has unit: '1'");
                }
            }
        }
    }

    private static CheckFinding Wrong(FilePosition at, string id, string unit, Expression formula) => CheckFinding.At(
        at,
        $"'{id}' is said to be in '{unit}', but '{formula}' adds or subtracts weighings alone, so it is in g",
        unit == "mg" ? $"write 'unit: g', or the formula 1000 * ({formula})" : "write 'unit: g', or look at the formula");

    /// <summary>Whether a formula is masses added and subtracted and nothing else.</summary>
    private static bool IsSum(Expression formula, HashSet<string> masses) =>
        formula.Names.Count > 0 && formula.Names.All(masses.Contains)
        && formula.Nodes.All(n => n is NameTerm or Negation or BinaryOperation { Operator: Operator.Add or Operator.Subtract });
}
