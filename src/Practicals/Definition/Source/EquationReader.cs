using Calx.Chemistry.Equations;
using Calx.Chemistry.Formulas;
using Calx.Measurement.Numbers;

namespace Calx.Practicals.Definition.Source;

/// <summary>Reads equations, checks that they balance, and ties their formulas to the practical's materials.</summary>
internal sealed class EquationReader(IdTables ids, FaultList faults)
{
    /// <summary>Stands in for an equation that could not be read; the practical is then not used.</summary>
    private static readonly Equation Unread = Equation.Parse("H -> H").Value;

    private readonly FormulaReader formulas = new(faults);

    public Reaction Reaction(FileMap map, IReadOnlyList<Material> materials)
    {
        string id = map.Id("id", ids.Reactions);
        Equation equation = EquationOf(map);
        var meant = new MeantMaterials(equation, faults);
        foreach (FileEntry entry in map.Map("materials", "materials, formula to material")?.Pairs() ?? [])
        {
            Formula? formula = formulas.Of(entry.Key);
            string? material = map.ReferenceOf(entry.Value, ids.Materials);
            if (formula is not null && material is not null)
            {
                meant.Add(entry, formula, materials.First(m => m.Id == material));
            }
        }

        IReadOnlyList<ReactionTerm> reactants = meant.Side(equation.Reactants);
        IReadOnlyList<ReactionTerm> products = meant.Side(equation.Products);
        FilePosition written = map.Find("equation")?.At ?? map.At;
        if (equation != Unread)
        {
            meant.CheckComplete(written);
        }

        return new Reaction(id, equation, Limiting(map, equation, reactants), reactants, products, map.At);
    }

    public Alternative Alternative(FileMap map)
    {
        string id = map.Id("id", ids.Alternatives);
        string label = map.Text("label");
        Equation equation = EquationOf(map);
        Term sample = map.Need("sample", "the reactant that is the sample") is FileNode written
            ? TermOf(written, equation.Reactants, "reactant") ?? Unread.Reactants[0]
            : Unread.Reactants[0];
        Term[] stays = [.. Stays(map).Select(node => TermOf(node, equation.Products, "product")).OfType<Term>()];
        return new Alternative(id, label, equation, sample, stays, map.At);
    }

    /// <summary>Whether two formulas mean the same species, states of matter left aside.</summary>
    public static bool Same(Formula a, Formula b) =>
        a.Charge == b.Charge && a.Composition.Count == b.Composition.Count
        && a.Composition.All(e => b.CountOf(e.Element) == e.Count);

    private IReadOnlyList<FileNode> Stays(FileMap map)
    {
        FileNode? value = map.Need("stays", "a list of the products that stay in the vessel");
        if (value is not (null or UnreadableNode or ListNode { Items.Count: > 0 }))
        {
            faults.Add(value.At, "a list of the products that stay in the vessel was expected, such as [Na2CO3]");
        }

        return (value as ListNode)?.Items ?? [];
    }

    private Term? TermOf(FileNode node, IReadOnlyList<Term> side, string kind)
    {
        Formula? formula = formulas.Of(node);
        Term? term = formula is null ? null : side.FirstOrDefault(t => Same(t.Formula, formula));
        if (formula is not null && term is null)
        {
            faults.Add(node.At, $"{formula} is no {kind} of this equation; expected {string.Join(", ", side.Select(t => t.Formula))}");
        }

        return term;
    }

    private Equation EquationOf(FileMap map)
    {
        if (map.Need("equation", "a balanced equation, such as 2Mg + O2 -> 2MgO") is not FileNode value)
        {
            return Unread;
        }

        if (value is not ScalarNode { IsNothing: false } scalar)
        {
            faults.Add(value.At, "a balanced equation was expected here, such as 2Mg + O2 -> 2MgO");
            return Unread;
        }

        Parsed<Equation> parsed = Equation.Parse(scalar.Text);
        if (!parsed.Succeeded)
        {
            faults.Add(FileMap.Within(scalar, parsed.Fault.Span), parsed.Fault.ToString());
            return Unread;
        }

        Equation equation = Balanced(parsed.Value, scalar.At);
        foreach (Term term in equation.Reactants.Concat(equation.Products))
        {
            formulas.CheckHasMolarMass(term.Formula, scalar.At);
        }

        return equation;
    }

    /// <summary>The equation as it should be: one that is not balanced is a fault, and the rest of the file is looked at with
    /// its only balancing.</summary>
    private Equation Balanced(Equation equation, FilePosition at)
    {
        if (equation.CheckAsWritten() is not WrittenCheck.NotBalanced wrong)
        {
            return equation;
        }

        string reason = $"the equation is not balanced, {string.Join(", ", wrong.Imbalances)}";
        if (equation.Balance() is BalancingResult.Balanced balanced)
        {
            faults.AddHarmless(at, $"{reason}; did you mean {balanced.Text}?");
            return Equation.Parse(balanced.Text).Value;
        }

        faults.Add(at, $"{reason}; and no whole numbers balance it, so a substance is missing or wrong");
        return equation;
    }

    private string Limiting(FileMap map, Equation equation, IReadOnlyList<ReactionTerm> reactants)
    {
        string limiting = map.Reference("limiting", ids.Materials);
        if (limiting != "?" && equation != Unread && !reactants.Any(r => r.Material == limiting))
        {
            faults.Add(map.Find("limiting")!.At, $"'{limiting}' is no reactant of this equation");
        }

        return limiting;
    }
}
