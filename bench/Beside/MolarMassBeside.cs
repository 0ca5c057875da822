using System.Globalization;
using Calx.Chemistry.Elements;
using Calx.Chemistry.Formulas;
using Calx.Measurement.Uncertainty;

namespace Calx.Bench.Beside;

/// <summary>
/// Reading 210 formulas and finding their molar masses beside periodictable. Ours come with an uncertainty that knows
/// its elements; the peer's without.
/// </summary>
internal static class MolarMassBeside
{
    // Middle of an interval against the abridged value: most for lithium and boron, where the interval is wide.
    private const double Agreement = 3e-3;

    public static bool Run(SideBySide side)
    {
        string[] formulas = PeerData.Words("formulas.txt");
        double[] sums = Sums(formulas);
        return side.Compare(
            $"{formulas.Length} formulas read and their molar masses found",
            "passes",
            new Peer("molarmass.py", "5"),
            1,
            () => Agree(formulas, sums),
            least: 300);
    }

    private static bool Agree(string[] formulas, double[] sums)
    {
        bool all = true;
        for (int i = 0; i < formulas.Length; i++)
        {
            UncertainValue mass = Formula.Parse(formulas[i]).Value.MolarMass(AtomicWeights.Iupac2024);
            all &= mass.StandardUncertainty > 0 && Math.Abs((mass.Value / sums[i]) - 1) < Agreement;
        }

        return all;
    }

    // Sums of the five-figure weights that the peer checks itself against (data/weights.txt), made once and not timed.
    private static double[] Sums(string[] formulas)
    {
        Dictionary<string, double> weights = PeerData.Words("weights.txt").Chunk(2)
            .ToDictionary(pair => pair[0], pair => double.Parse(pair[1], CultureInfo.InvariantCulture));
        return [.. formulas.Select(formula =>
            Formula.Parse(formula).Value.Composition.Sum(atoms => atoms.Count * weights[atoms.Element.Symbol]))];
    }
}
