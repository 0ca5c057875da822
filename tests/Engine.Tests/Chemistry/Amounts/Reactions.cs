using Calx.Chemistry.Amounts;
using Calx.Measurement.Uncertainty;

namespace Calx.Engine.Tests.Chemistry.Amounts;

/// <summary>Reactions with molar masses added up by hand from abridged atomic weights (IUPAC).</summary>
internal static class Reactions
{
    public static Reaction BurningMagnesium { get; } = new(
        [Part("Mg", 2, 24.3), Part("O2", 1, 32.0)], [Part("MgO", 2, 40.3)]);

    public static Reaction SiliconNitride { get; } = new(
        [Part("Si", 3, 28.085), Part("N2", 2, 28.014)], [Part("Si3N4", 1, 140.283)]);

    public static Reaction CopperFromSulfate { get; } = new(
        [Part("CuSO4", 1, 159.60), Part("Zn", 1, 65.38)], [Part("Cu", 1, 63.546), Part("ZnSO4", 1, 161.43)]);

    public static ReactionPart Part(string formula, long number, double molarMass) =>
        new(formula, number, UncertainValue.Exact(molarMass));

    public static WeighedReagent Put(string formula, double grams, double u = 0) =>
        new(formula, u == 0 ? UncertainValue.Exact(grams) : UncertainValue.Of($"mass of {formula}", grams, u));
}
