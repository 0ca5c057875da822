namespace Calx.Bench.Beside;

/// <summary>
/// Reading and balancing a list of equations beside sympy's null spaces: the general one of a matrix, and the faster
/// one over the rationals. Ours also words why an equation cannot be balanced and finds all elementary balancings.
/// </summary>
internal static class BalancingBeside
{
    public static bool Run(SideBySide side)
    {
        (string Text, string Wanted)[] equations = EquationList.Read();
        bool general = Compare(side, equations, "sympy", 100);
        return Compare(side, equations, "domainmatrix", 20) && general;
    }

    private static bool Compare(SideBySide side, (string Text, string Wanted)[] equations, string implementation, double least) =>
        side.Compare(
            $"{equations.Length} equations read and balanced, {implementation}",
            "passes",
            new Peer("balance.py", "5", implementation),
            1,
            () => EquationList.Balance(equations).Zip(equations).All(pair => EquationList.Written(pair.First) == pair.Second.Wanted),
            least);
}
