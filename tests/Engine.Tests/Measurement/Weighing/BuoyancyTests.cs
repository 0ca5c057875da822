using System.Globalization;
using Calx.Measurement.Weighing;
using Calx.Tests;
using CsCheck;

namespace Calx.Engine.Tests.Measurement.Weighing;

public class BuoyancyTests
{
    // buoyancy_examples.csv: two textbook examples (Skoog and West; Harris; from memory) and four computed rows.
    public static TheoryData<string[]> Examples() => [.. ReferenceTable.Rows("buoyancy_examples.csv")];

    [Theory]
    [MemberData(nameof(Examples))]
    public void Mass_corrected_for_buoyancy_agrees_with_worked_examples(string[] row)
    {
        double found = Buoyancy.TrueMass(Number(row[1]), Number(row[4]), Number(row[2]), Number(row[3]));
        int decimals = row[5].Length - row[5].IndexOf('.', StringComparison.Ordinal) - 1;
        Assert.Equal(Number(row[5]), found, 0.51 * Math.Pow(10, -decimals));
    }

    [Fact]
    public void Correction_is_what_is_added_and_conventional_mass_undoes_it() =>
        Gen.Select(Gen.Double[0.01, 300], Gen.Double[500, 22_000]).Always(
            (shown, density) =>
            {
                double mass = Buoyancy.TrueMass(shown, density);
                Assert.Equal(mass, shown + Buoyancy.CorrectionInGrams(shown, density), 1e-12 * shown);
                Assert.Equal(shown, Buoyancy.ConventionalMass(mass, density), 1e-12 * shown);
            },
            iter: 300);

    [Fact]
    public void A_swelling_bag_reads_low_by_1_2_mg_per_cubic_centimetre() =>
        // Air of 1.2 mg/cm3 displaced; the weights' own buoyancy adds 0.015 %.
        Assert.Equal(1.2e-3, Buoyancy.LowReadingOfSwelling(1), 6);

    [Theory]
    [InlineData(1.0)]
    [InlineData(-5)]
    [InlineData(double.NaN)]
    public void A_load_lighter_than_air_is_refused(double density) =>
        Assert.Throws<ArgumentOutOfRangeException>(() => Buoyancy.TrueMass(1, density));

    private static double Number(string text) => double.Parse(text, CultureInfo.InvariantCulture);
}
