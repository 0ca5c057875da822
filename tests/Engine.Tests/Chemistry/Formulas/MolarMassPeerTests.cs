using System.Globalization;
using Calx.Chemistry.Elements;
using Calx.Chemistry.Formulas;

namespace Calx.Engine.Tests.Chemistry.Formulas;

/// <summary>Molar masses beside periodictable, with IUPAC's abridged weights in both (computed/molar_masses_peer.csv; the
/// script beside it says what had to be rewritten for the library).</summary>
public sealed class MolarMassPeerTests
{
    [Fact]
    public void Molar_masses_of_210_formulas_agree_with_periodictable()
    {
        AtomicWeights weights = AtomicWeightSets.Named("iupac-abridged");
        string[][] rows = [.. File.ReadLines(
                Path.Combine(AppContext.BaseDirectory, "reference", "computed", "molar_masses_peer.csv"))
            .Where(line => line[0] != '#').Skip(1).Select(line => line.Split(','))];
        Assert.Equal(210, rows.Length);
        Assert.All(rows, row =>
        {
            double mass = Formula.Parse(row[0]).Value.MolarMass(weights).Value;
            // Nine decimals are printed, so agreement is to half of the last.
            Assert.Equal(double.Parse(row[1], CultureInfo.InvariantCulture), mass, 1e-9);
        });
    }
}
