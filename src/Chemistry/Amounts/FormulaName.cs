using Calx.Chemistry.Formulas;

namespace Calx.Chemistry.Amounts;

/// <summary>What a substance is called in a reckoning of amounts.</summary>
internal static class FormulaName
{
    /// <summary>The plain formula; solid and dissolved count as one substance, for they have one molar mass.</summary>
    public static string WithoutState(Formula formula)
    {
        string text = formula.ToString();
        return formula.State == MatterState.NotSaid ? text : text[..text.LastIndexOf('(')];
    }
}
