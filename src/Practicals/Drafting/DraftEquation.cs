using Calx.Chemistry.Elements;
using Calx.Chemistry.Equations;
using Calx.Chemistry.Formulas;

namespace Calx.Practicals.Drafting;

/// <summary>A draft's balanced equation, sorted by the part that each substance plays.</summary>
internal sealed class DraftEquation
{
    /// <summary>Gases at room temperature. Common knowledge, no source.</summary>
    private static readonly HashSet<string> Gases =
        new(["H2", "O2", "N2", "CO2", "CO", "NO", "NO2", "N2O", "SO2", "SO3", "H2S", "NH3", "HCl", "Cl2", "CH4", "C2H4"], StringComparer.Ordinal);

    /// <summary>Gases that stay in a solution where there is one.</summary>
    private static readonly HashSet<string> Dissolved = new(["HCl", "NH3", "SO3", "H2O"], StringComparer.Ordinal);

    private DraftEquation(string text, DraftSpecies sample, IReadOnlyList<DraftSpecies> others, IReadOnlyList<DraftSpecies> products, DraftSpecies? product)
    {
        Text = text;
        Sample = sample;
        Others = others;
        Products = products;
        Product = product;
    }

    /// <summary>The balanced equation.</summary>
    public string Text { get; }

    /// <summary>What is weighed out.</summary>
    public DraftSpecies Sample { get; }

    /// <summary>The other reactants.</summary>
    public IReadOnlyList<DraftSpecies> Others { get; }

    /// <summary>All that is made.</summary>
    public IReadOnlyList<DraftSpecies> Products { get; }

    /// <summary>What is left, or collected; null where everything that is made is a gas.</summary>
    public DraftSpecies? Product { get; }

    /// <summary>Every substance, each once.</summary>
    public IEnumerable<DraftSpecies> All => [Sample, .. Others, .. Products];

    /// <summary>Molar mass of a substance in g/mol.</summary>
    public static double MassOf(DraftSpecies one) => one.Formula.MolarMass(AtomicWeights.Iupac2024).Value;

    /// <summary>Reads an equation; what is wrong is noted by question.</summary>
    public static DraftEquation? Read(DraftFamily family, DraftWords words)
    {
        if (Balanced(words) is not (Equation equation, string text))
        {
            return null;
        }

        Term[] reactants = [.. equation.Reactants];
        int sample = Place(words, "sample", reactants, "reactant");
        if (sample < 0)
        {
            return null;
        }

        var products = equation.Products.Select((t, i) => Species(family, t, $"made{Letter(i)}", null, isProduct: true)).ToList();
        int made = words.Typed("product").Length == 0 ? products.FindIndex(p => !p.IsGas) : Place(words, "product", [.. equation.Products], "product");
        if (made < 0 && words.Typed("product").Length > 0)
        {
            return null;
        }

        if (made >= 0 && products[made].IsGas)
        {
            words.Fault("product", $"'{products[made].Text}' leaves as a gas, so it cannot be what is left");
            return null;
        }

        if (made >= 0)
        {
            products[made] = products[made] with { Name = words.NameOf("productName", products[made].Text) };
        }

        return new DraftEquation(
            text,
            Species(family, reactants[sample], "start", words.NameOf("sampleName", new DraftSpecies("start", reactants[sample].Formula, 1, "", false).Text), isProduct: false),
            [.. reactants.Where((_, i) => i != sample).Select((t, i) => Species(family, t, $"other{Letter(i)}", null, isProduct: false))],
            products,
            made < 0 ? null : products[made]);
    }

    private static (Equation Equation, string Text)? Balanced(DraftWords words)
    {
        var parsed = Equation.Parse(words["equation"]);
        if (!parsed.Succeeded)
        {
            words.Fault("equation", parsed.Fault.ToString());
            return null;
        }

        foreach (Formula formula in parsed.Value.Reactants.Concat(parsed.Value.Products).Select(t => t.Formula))
        {
            if (!formula.FindMolarMass(AtomicWeights.Iupac2024).Succeeded)
            {
                words.Fault("equation", $"{formula} has no molar mass");
                return null;
            }
        }

        switch (parsed.Value.Balance())
        {
            case BalancingResult.Balanced balanced:
                return (Equation.Parse(balanced.Text).Value, balanced.Text);
            case BalancingResult.CannotBalance cannot:
                words.Fault("equation", $"it cannot be balanced: {cannot.Reason}");
                return null;
            case BalancingResult.ManyBalances many when parsed.Value.CheckAsWritten() is not WrittenCheck.NotBalanced:
                return (parsed.Value, parsed.Value.ToString());
            case BalancingResult.ManyBalances many:
                words.Fault("equation", $"it can be balanced in several ways: {many.Reason}; write the coefficients that you mean");
                return null;
            case BalancingResult.Undecided undecided:
                words.Fault("equation", undecided.Reason);
                return null;
            default:
                throw new InvalidOperationException("No other case of a balancing exists.");
        }
    }

    /// <summary>Where the substance that a question names stands on one side; the first where nothing is said.</summary>
    private static int Place(DraftWords words, string key, Term[] side, string kind)
    {
        string typed = words.Typed(key);
        if (typed.Length == 0)
        {
            return 0;
        }

        var parsed = Formula.Parse(typed);
        int at = parsed.Succeeded ? Array.FindIndex(side, t => Definition.Source.EquationReader.Same(t.Formula, parsed.Value)) : -1;
        if (at < 0)
        {
            words.Fault(key, $"'{typed}' is no {kind} of the equation; expected {string.Join(", ", side.Select(t => t.Formula))}");
        }

        return at;
    }

    private static DraftSpecies Species(DraftFamily family, Term term, string id, string? name, bool isProduct)
    {
        string bare = new DraftSpecies(id, term.Formula, 1, "", false).Text;
        bool isGas = term.Formula.State == MatterState.Gas || (term.Formula.State == MatterState.NotSaid && family switch
        {
            // Heated in the open, water leaves as vapour.
            DraftFamily.Heated => Gases.Contains(bare) || (isProduct && bare == "H2O"),
            DraftFamily.Closed => false,
            _ => isProduct && Gases.Contains(bare) && !Dissolved.Contains(bare),
        });
        return new DraftSpecies(id, term.Formula, term.Coefficient ?? 1, name ?? bare, isGas);
    }

    private static char Letter(int i) => (char)('A' + i);
}
