using System.Globalization;
using Calx.Chemistry.Elements;
using Calx.Chemistry.Formulas;
using Calx.Measurement.Expressions;
using Calx.Measurement.Uncertainty;
using Calx.Practicals.Definition;
using Calx.Practicals.Model;

namespace Calx.Practicals.Checking;

/// <summary>What the file says of perfect readings: the theory values, and conclusions that could not hold even then.</summary>
internal sealed class IdealCheck
{
    /// <summary>In g: two steps of a balance of 0.01 g. What moves by less is 'the same' to a class.</summary>
    private const double Same = 0.02;

    /// <summary>How far from a number that is to be chosen the theory value may lie: half as much again would be another number.</summary>
    private const double Near = 1.1;

    private readonly Practical practical;
    private readonly FilePlaces places;
    private readonly AtomicWeights weights;
    private readonly IdealRun run;
    private readonly HashSet<string> untaken;
    private readonly Dictionary<string, double?> values = new(StringComparer.Ordinal);

    public IdealCheck(Practical practical, IdealRun run, FilePlaces places, AtomicWeights weights)
    {
        this.practical = practical;
        this.places = places;
        this.weights = weights;
        this.run = run;
        HashSet<string> taken = FlatProcedure.Taken(practical);
        untaken = [.. practical.Readings.Select(r => r.Id).Where(id => !taken.Contains(id))];
        foreach (QuantityDefinition quantity in practical.Quantities)
        {
            values[quantity.Id] = IsKnown(quantity) ? Accepted(run, quantity.Id) : null;
        }
    }

    /// <summary>The theory values.</summary>
    public IReadOnlyList<IdealValue> Values => [.. practical.Quantities.Select(q => new IdealValue(q, values[q.Id]))];

    /// <summary>Whether a quantity has a theory value.</summary>
    public bool Knows(string quantityId) => values.GetValueOrDefault(quantityId) is not null;

    /// <summary>Quantities that the readings do not determine, and those that have no value.</summary>
    public IEnumerable<CheckFinding> OfQuantities()
    {
        for (int i = 0; i < practical.Quantities.Count; i++)
        {
            QuantityDefinition quantity = practical.Quantities[i];
            FilePosition at = places.Of("quantities", i, "formula");
            if (quantity.Formula.Names.FirstOrDefault(untaken.Contains) is string missing)
            {
                yield return CheckFinding.At(
                    at,
                    $"no reading that is taken determines '{quantity.Id}': '{practical.Reading(missing).Label}' is missing",
                    $"take it: put 'read: {missing}' into the procedure where it is weighed");
            }
            else if (values[quantity.Id] is null && IsKnown(quantity))
            {
                yield return CheckFinding.At(
                    at,
                    $"on perfect readings '{quantity.Id}' has no value",
                    "look for a difference that is 0 below a fraction line or goes the other way in a logarithm, or for a substance that is used up altogether");
            }
            else if (quantity.Id == practical.Findings.Sample && values[quantity.Id] <= 0)
            {
                yield return CheckFinding.At(
                    at,
                    $"on perfect readings the sample, '{quantity.Id}', is {Figures(values[quantity.Id]!.Value)} g",
                    "look at its formula, and at where its readings stand in the procedure: one of them is taken too early or too late");
            }
            else if (practical.Parts.FirstOrDefault(p => HangsOn(quantity, p)) is Part part && !IsPlain(quantity))
            {
                yield return CheckFinding.At(
                    at,
                    $"no reading determines '{quantity.Id}': the unknown mass of {part.Label} stays in it ({OnThePan(quantity, part)})",
                    $"a weighing is missing: weigh {part.Label} before anything is put in, with nothing else on the pan than at the other readings, and subtract it");
            }
        }
    }

    /// <summary>What is expected and concluded, and could never be.</summary>
    public IEnumerable<CheckFinding> OfConclusions()
    {
        foreach (string wrong in Expected(practical.Findings.Expect))
        {
            yield return CheckFinding.At(places.Of("findings", "expect"), wrong, "look at the equation, at the ideals, or say what is expected otherwise");
        }

        for (int i = 0; i < practical.Conclusions.Count; i++)
        {
            ConclusionTest? test = practical.Conclusions[i].Test;
            if (test is not null && values.GetValueOrDefault(test.Quantity) is double value && Wrong(test, value) is string wrong)
            {
                yield return CheckFinding.At(
                    places.Of("conclusions", i, "test"),
                    $"this can never hold: on perfect readings '{test.Quantity}' {wrong}",
                    "look at the quantity's formula, at the ideals, or conclude something else");
            }
        }
    }

    /// <summary>Whether the model knows every reading that it rests on.</summary>
    private bool IsKnown(QuantityDefinition quantity) => quantity.Formula.Names.All(run.Masses.Ids.Contains);

    /// <summary>Whether a vessel belongs in it: where nothing is to change, everything on the pan may be what is asked for, and a reading
    /// by itself is what it says unless it is to be the sample.</summary>
    private bool IsPlain(QuantityDefinition quantity) =>
        practical.Findings.Expect == ExpectedChange.Same || (quantity.Formula is NameTerm && quantity.Id != practical.Findings.Sample && !IsOfFormula(quantity));

    /// <summary>What a formula is sought from is the mass of a substance alone.</summary>
    private bool IsOfFormula(QuantityDefinition quantity) => practical.Findings.Formula?.Elements.Values.Contains(quantity.Id) == true;

    /// <summary>Whether the value changes when a part weighs more: a part cancels from whatever is asked of its contents.</summary>
    private bool HangsOn(QuantityDefinition quantity, Part part)
    {
        if (values[quantity.Id] is null)
        {
            return false;
        }

        double more = part.Mass.Typical / 10;
        try
        {
            double heavier = quantity.Formula.Evaluate(
                id => run.Masses.Last(id) + (practical.Reading(id).Pan.Parts.Contains(part.Id) ? more : 0),
                formula => Formula.Parse(formula).Value.MolarMass(weights).Value);
            double value = values[quantity.Id]!.Value;
            return Math.Abs(heavier - value) > 1e-6 * Math.Max(Math.Abs(value), more);
        }
        catch (UndefinedResultException)
        {
            return true;
        }
    }

    private string OnThePan(QuantityDefinition quantity, Part part)
    {
        ILookup<bool, string> on = quantity.Formula.Names.Where(n => practical.Reading(n).Gauge is null)
            .ToLookup(n => practical.Reading(n).Pan.Parts.Contains(part.Id), n => $"'{n}'");
        string with = $"it is on the pan at {string.Join(", ", on[true])}";
        return on[false].Any() ? $"{with} and not at {string.Join(", ", on[false])}" : with;
    }

    private IEnumerable<string> Expected(ExpectedChange expected)
    {
        if (values.GetValueOrDefault(practical.Findings.Change) is not double change)
        {
            yield break;
        }

        string is_ = string.Create(CultureInfo.InvariantCulture, $"on perfect readings '{practical.Findings.Change}' is {Figures(change)} g");
        switch (expected)
        {
            case ExpectedChange.Rises when change <= 0:
                yield return $"the mass is expected to rise, but {is_}";
                break;
            case ExpectedChange.Falls when change >= 0:
                yield return $"the mass is expected to fall, but {is_}";
                break;
            case ExpectedChange.Same when Math.Abs(change) > Same:
                yield return $"the mass is expected to stay the same, but {is_}";
                break;
        }
    }

    private string? Wrong(ConclusionTest test, double value) => test switch
    {
        ConclusionTest.Moves moves => value > 0 == moves.Up && value != 0 ? null : $"is {Figures(value)}, which {(moves.Up ? "does not rise" : "does not fall")}",
        ConclusionTest.Stays => Math.Abs(value) <= Same ? null : $"is {Figures(value)}, which is not the same",
        ConclusionTest.Chooses chooses => NotAmong(value, chooses.Among.Count > 0 ? chooses.Among : [.. practical.Findings.Alternatives.Select(a => a.ExpectedFraction(weights).Value)]),
        ConclusionTest.Within => value == 0 ? "is 0, and a share of 0 is nothing" : null,
        _ => null,
    };

    private static string? NotAmong(double value, IReadOnlyList<double> among) =>
        among.Count == 0 ? $"is {Figures(value)}, and there is nothing to choose from"
        : value > 0 && among.Any(a => a > 0 && Math.Max(value / a, a / value) < Near) ? null
        : $"is {Figures(value)}, which is none of {string.Join(", ", among.Select(Figures))}";

    private static double? Accepted(IdealRun run, string quantity)
    {
        try
        {
            double value = run.Accepted(quantity);
            return double.IsFinite(value) ? value : null;
        }
        catch (UndefinedResultException)
        {
            return null;
        }
    }

    private static string Figures(double value) => value.ToString("G4", CultureInfo.InvariantCulture);
}
