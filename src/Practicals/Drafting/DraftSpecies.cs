using Calx.Chemistry.Formulas;

namespace Calx.Practicals.Drafting;

/// <summary>One substance of a draft's equation.</summary>
/// <param name="Material">The id of its material.</param>
/// <param name="Formula">Its formula.</param>
/// <param name="Coefficient">Its coefficient in the balanced equation.</param>
/// <param name="Name">Its name in words, or its formula.</param>
/// <param name="IsGas">Whether it comes from the air or leaves into it.</param>
internal sealed record DraftSpecies(string Material, Formula Formula, long Coefficient, string Name, bool IsGas)
{
    /// <summary>Its formula without a state, as molar masses are written.</summary>
    public string Text
    {
        get
        {
            string text = Formula.ToString();
            int state = text.IndexOf('(', StringComparison.Ordinal);
            return Formula.State == MatterState.NotSaid || state < 0 ? text : text[..text.LastIndexOf('(')];
        }
    }

    /// <summary>Coefficient times molar mass, as a formula.</summary>
    public string MolesTimesMass => Coefficient == 1 ? $"M({Text})" : FormattableString.Invariant($"{Coefficient} * M({Text})");
}
