using Calx.Chemistry.Formulas;

namespace Calx.Practicals.Drafting;

/// <summary>A salt with water of crystallisation that is heated until only the salt is left: its class asks how many moles of water go with one
/// mole of the salt.</summary>
/// <param name="Salt">What is left.</param>
/// <param name="Moles">Moles of water driven off for one mole of it: from the equation.</param>
/// <param name="WholeFormula">The sample's formula where all of its water is driven off; null where some stays in what is left.</param>
internal sealed record DraftHydrate(DraftSpecies Salt, double Moles, string? WholeFormula)
{
    /// <summary>Signs that tie the water to the salt in a formula.</summary>
    private static readonly char[] Ties = ['.', '·', '•', '*', '⋅'];

    /// <summary>The most that a class chooses among where the equation says less.</summary>
    private const int UsualMost = 10;

    /// <summary>The hydrate of an equation, or null where it is something else that is heated.</summary>
    public static DraftHydrate? Of(DraftFamily family, DraftEquation equation)
    {
        DraftSpecies[] left = [.. equation.Products.Where(p => !p.IsGas)];
        DraftSpecies[] gone = [.. equation.Products.Where(p => p.IsGas)];
        bool is_ = family == DraftFamily.Heated && equation.Others.Count == 0 && left.Length == 1 && gone.Length == 1
            && IsWater(gone[0].Formula) && equation.Sample.Text.IndexOfAny(Ties) > 0;
        return !is_ ? null : new DraftHydrate(
            left[0], (double)gone[0].Coefficient / left[0].Coefficient, left[0].Text.IndexOfAny(Ties) > 0 ? null : equation.Sample.Text);
    }

    /// <summary>Their number as a sheet has it.</summary>
    public string Number => DraftWords.Plain(Moles);

    /// <summary>Moles of water for one mole of the salt, over readings.</summary>
    /// <param name="left">The mass that is left, over readings.</param>
    public string RatioOf(string left) => $"((before - after) / M(H2O)) / (({left}) / M({Salt.Text}))";

    /// <summary>The numbers among which a class chooses.</summary>
    public string Among
    {
        get
        {
            IEnumerable<double> whole = Enumerable.Range(1, Math.Max(UsualMost, (int)Math.Ceiling(Moles) + 3)).Select(n => (double)n);
            return string.Join(", ", whole.Append(Moles).Distinct().Order().Select(DraftWords.Plain));
        }
    }

    private static bool IsWater(Formula formula) =>
        formula.Charge == 0 && formula.Composition.Count == 2 && formula.Composition.All(e => (e.Element.Symbol, e.Count) is ("H", 2) or ("O", 1));
}
