using Calx.Engine.Tests.Measurement.Statistics;
using Calx.Measurement.Uncertainty;

namespace Calx.Engine.Tests.Measurement.Uncertainty;

/// <summary>Worked examples A1 to A3 of the Eurachem/CITAC guide QUAM:2012; values in quam_*.csv.</summary>
public class QuamExamplesTests
{
    [Fact]
    public void Khp_molar_mass_is_204_2212_with_u_of_0_0038()
    {
        UncertainValue molarMass = KhpMolarMass();
        Assert.Equal(204.2212, molarMass.Value, 0.00005);
        Assert.Equal(0.0038, molarMass.StandardUncertainty, 0.00005);
    }

    [Fact]
    public void A1_cadmium_standard_is_1002_7_mg_per_litre()
    {
        ReferenceTable table = ReferenceTable.Read("quam_a1.csv");
        UncertainValue volume = Of(table, "V_flask") + Of(table, "V_repeatability") + Of(table, "V_temperature");
        UncertainValue concentration = 1000 * Of(table, "m") * Of(table, "P") / volume;
        Assert.Equal(1002.69972, concentration.Value, 0.000005);
        Assert.Equal(0.835199, concentration.StandardUncertainty, 0.0000005);
    }

    [Fact]
    public void A1_from_the_rounded_uncertainties_that_the_guide_prints_is_0_9_mg_per_litre()
    {
        ReferenceTable table = ReferenceTable.Read("quam_a1.csv");
        ReferenceRow volume = table.Rows.Single(row => row.Text("kind") == "intermediate");
        UncertainValue flask = UncertainValue.Of("V", volume.Number("value"), volume.Number("standard_u"));
        UncertainValue concentration = 1000 * Rounded(table, "m") * Rounded(table, "P") / flask;
        Assert.Equal(0.9, concentration.StandardUncertainty, 0.05);
    }

    [Fact]
    public void A2_sodium_hydroxide_is_0_10214_mol_per_litre()
    {
        ReferenceTable table = ReferenceTable.Read("quam_a2.csv");
        UncertainValue volume = Of(table, "V_T_calibration") + Of(table, "V_T_temperature");
        UncertainValue concentration = Of(table, "R_repeatability") * 1000 * Of(table, "m_KHP") * Of(table, "P_KHP")
            / (KhpMolarMass() * volume);
        Assert.Equal(0.102136159706, concentration.Value, 5e-12);
        Assert.Equal(0.000100500722124, concentration.StandardUncertainty, 5e-15);
        Assert.Equal(0.00097, concentration.RelativeStandardUncertainty, 0.00002);
    }

    [Fact]
    public void A3_hydrochloric_acid_is_0_10139_mol_per_litre()
    {
        UncertainValue concentration = Acid(1, 0, 0);
        Assert.Equal(0.10139, concentration.Value, 0.000005);
        Assert.Equal(0.0001843, concentration.StandardUncertainty, 0.00000005);
    }

    [Fact]
    public void A3_with_triplicates_has_u_of_0_00016()
        => Assert.Equal(0.00016, Acid(1 / Math.Sqrt(3), 0, 0).StandardUncertainty, 0.000005);

    [Fact]
    public void A3_with_an_end_point_bias_in_each_titration_has_u_of_0_00031()
    {
        UncertainValue concentration = Acid(1 / Math.Sqrt(3), 0.05, 0.03);
        Assert.Equal(0.10132, concentration.Value, 0.000005);
        Assert.Equal(0.00031, concentration.StandardUncertainty, 0.000005);
    }

    private static UncertainValue Acid(double repeatability, double bias, double biasUncertainty)
    {
        ReferenceTable table = ReferenceTable.Read("quam_a3.csv");
        UncertainValue Bias() => UncertainValue.Of("end point", bias, biasUncertainty);
        UncertainValue Volume(string name) => Of(table, $"{name}_calibration") + Of(table, $"{name}_temperature");
        UncertainValue scatter = 1 + (repeatability * (Of(table, "R_repeatability") - 1));
        return scatter * 1000 * Of(table, "m_KHP") * Of(table, "P_KHP") * (Volume("V_T2") - Bias())
            / ((Volume("V_T1") - Bias()) * KhpMolarMass() * Volume("V_HCl"));
    }

    private static UncertainValue KhpMolarMass()
        => UncertainValue.Sum(ReferenceTable.Read("quam_khp_molar_mass.csv").Rows.Select(row => row.Number("count")
            * UncertainValue.Of(row.Text("element"), row.Number("atomic_weight"), row.Number("half_width") / Math.Sqrt(3))));

    private static UncertainValue Rounded(ReferenceTable table, string name)
    {
        ReferenceRow row = Row(table, name);
        return UncertainValue.Of(name, row.Number("value"), row.Number("standard_u"));
    }

    // Standard uncertainty from the half-width: JCGM 100:2008, 4.3.7 (rectangular) and 4.3.9 (triangular).
    private static UncertainValue Of(ReferenceTable table, string name)
    {
        ReferenceRow row = Row(table, name);
        double halfWidth = row.Number("half_width_or_u");
        double u = row.Text("dist") switch
        {
            "normal u" => halfWidth,
            "triangular" => halfWidth / Math.Sqrt(6),
            "rect" => halfWidth / Math.Sqrt(3),
            var twice when twice.StartsWith("rect twice", StringComparison.Ordinal) => halfWidth * Math.Sqrt(2.0 / 3),
            var other => throw new InvalidOperationException(other),
        };
        return UncertainValue.Of(name, row.Number("value"), u);
    }

    private static ReferenceRow Row(ReferenceTable table, string name)
        => table.Rows.Single(row => row.Text("kind") == "input" && row.Text("quantity") == name);
}
