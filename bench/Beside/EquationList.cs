using Calx.Chemistry.Equations;

namespace Calx.Bench.Beside;

/// <summary>64 equations, of which 58 have one balancing, 3 several and 3 none: read and balanced one after another.</summary>
internal static class EquationList
{
    /// <summary>Each equation with its smallest whole numbers, or 'many' or 'none', written down beforehand.</summary>
    public static (string Text, string Wanted)[] Read() =>
        [.. PeerData.Lines("equations.txt").Select(line => line.Split(';')).Select(parts => (parts[0].Trim(), parts[1].Trim()))];

    /// <summary>Reads and balances all.</summary>
    public static BalancingResult[] Balance((string Text, string Wanted)[] equations)
    {
        var results = new BalancingResult[equations.Length];
        for (int i = 0; i < results.Length; i++)
        {
            results[i] = Equation.Parse(equations[i].Text).Value.Balance();
        }

        return results;
    }

    /// <summary>The answer as the file writes it.</summary>
    public static string Written(BalancingResult result) => result switch
    {
        BalancingResult.Balanced balanced => string.Join(' ', balanced.Coefficients),
        BalancingResult.ManyBalances => "many",
        BalancingResult.CannotBalance => "none",
        _ => "undecided",
    };
}
