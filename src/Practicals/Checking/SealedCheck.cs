using Calx.Chemistry.Formulas;
using Calx.Practicals.Definition;

namespace Calx.Practicals.Checking;

/// <summary>A gas that stays in a sealed, rigid vessel bursts it, whether or not the file calls it one of the air.</summary>
internal static class SealedCheck
{
    /// <summary>Substances that are gases at room temperature and hardly stay in water. Common knowledge, no source.</summary>
    private static readonly Formula[] Gases =
        [.. new[] { "H2", "O2", "N2", "CO2", "CO", "NO", "NO2", "N2O", "SO2", "H2S", "Cl2", "CH4", "C2H4" }.Select(text => Formula.Parse(text).Value)];

    public static IEnumerable<CheckFinding> Of(Practical practical) =>
        from step in FlatProcedure.Of(practical.Procedure).OfType<ReactEvent>()
        where practical.Places.Any(p => p.Id == step.In && p.SealedAndRigid)
        let reaction = practical.Reactions.First(r => r.Id == step.Reaction)
        let gas = reaction.Products.FirstOrDefault(p => practical.Materials.Any(m => m.Id == p.Material && !m.Air) && IsGas(p))
        where gas is not null
        select CheckFinding.At(
            step.At,
            $"'{reaction.EquationText}' makes a gas, {gas.FormulaText}, in a sealed, rigid vessel, which can burst",
            "let it vent, or put a bag on it that holds three times the gas",
            CheckKind.Fault);

    private static bool IsGas(ReactionTerm product) => product.Formula.State switch
    {
        MatterState.Gas => true,
        MatterState.NotSaid => Gases.Any(gas => gas.Charge == product.Formula.Charge && gas.Composition.SequenceEqual(product.Formula.Composition)),
        _ => false,
    };
}
