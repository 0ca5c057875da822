using System.Globalization;
using Calx.Engine.Tests.Measurement.Statistics;
using Calx.Measurement.Distributions;
using Calx.Measurement.Expressions;
using Calx.Measurement.Uncertainty;

namespace Calx.Engine.Tests.Measurement.Uncertainty;

/// <summary>The worked examples of JCGM 100:2008 (GUM), annex H; values in gum_h1.csv, gum_h2_*.csv, gum_h3_*.csv.</summary>
public class GumExamplesTests
{
    private static readonly ReferenceTable EndGauge = ReferenceTable.Read("gum_h1.csv");

    [Fact]
    public void H1_end_gauge_has_u_of_32_nm_with_16_degrees_of_freedom_and_U99_of_93_nm()
    {
        UncertainValue length = FirstOrder.Propagate(EndGaugeModel());
        Assert.Equal(50000838, length.Value);
        Assert.Equal(31.71, length.StandardUncertainty, 0.005);
        // H.1.6 truncates to 16; the 16.7 before truncation is from memory.
        Assert.Equal(16.7, length.DegreesOfFreedom, 0.05);
        Assert.Equal(16.8, FirstOrder.Propagate(EndGaugeModel(fromHalfWidths: true)).DegreesOfFreedom, 0.05);
        Assert.Equal(2.92, length.CoverageFactor(0.99), 0.005);
        Assert.Equal(92.6, length.Interval(0.99).Width / 2, 0.05);
    }

    [Theory]
    [InlineData("ls", 25)]
    [InlineData("d", 9.7)]
    [InlineData("da", 2.9)]
    [InlineData("dtheta", 16.6)]
    [InlineData("alpha_s", 0)]
    [InlineData("theta", 0)]
    public void H1_budget_is_table_H1(string input, double contribution)
        => Assert.Equal(
            contribution,
            FirstOrder.Propagate(EndGaugeModel(fromHalfWidths: true)).Budget.Single(entry => entry.Input.Name == input).Contribution,
            0.05);

    [Fact]
    public void H1_second_order_terms_raise_u_to_33_91_nm()
        => Assert.Equal(33.91, SecondOrder.StandardUncertainty(EndGaugeModel()), 0.005);

    [Theory]
    [InlineData(true)]
    [InlineData(false)]
    public void H2_resistance_reactance_and_impedance_with_and_without_correlation(bool correlated)
    {
        UncertainValue[] results = Impedance(correlated);
        ReferenceRow[] rows = [.. ReferenceTable.Read("gum_h2_results.csv").Rows.Take(6)];
        string u = correlated ? "computed_u" : "computed_u_neglected";
        for (int i = 0; i < 3; i++)
        {
            Assert.Equal(rows[i].Number("value"), results[i].Value, 0.0005 + 0.001);
            Assert.Equal(rows[i].Number(u), results[i].StandardUncertainty, 0.000006);
        }

        Assert.Equal(rows[3].Number(u), UncertainValue.Correlation(results[0], results[1]), 0.000006);
        Assert.Equal(rows[4].Number(u), UncertainValue.Correlation(results[0], results[2]), 0.000006);
        Assert.Equal(rows[5].Number(u), UncertainValue.Correlation(results[1], results[2]), 0.000006);
    }

    [Fact]
    public void H2_simultaneous_observations_keep_their_4_degrees_of_freedom()
    {
        // Approach 2 of H.2.4 computes R from each of the five sets of readings: 5 - 1 degrees of freedom.
        Assert.All(Impedance(correlated: true), result => Assert.Equal(4, result.DegreesOfFreedom, 1e-9));
    }

    [Fact]
    public void H3_predicted_correction_at_30_degrees_uses_the_correlation_of_intercept_and_slope()
    {
        ReferenceRow[] rows = [.. ReferenceTable.Read("gum_h3_results.csv").Rows];
        double r = rows[2].Number("computed");
        double dof = rows[5].Number("published");
        IReadOnlyList<UncertainValue> line = UncertainValue.Correlated(
            [
                new("intercept", rows[0].Number("computed"), rows[0].Number("computed_u"), dof),
                new("slope", rows[1].Number("computed"), rows[1].Number("computed_u"), dof),
            ],
            new double[,] { { 1, r }, { r, 1 } });
        UncertainValue correction = line[0] + (line[1] * (30 - 20));
        Assert.Equal(-0.1494, correction.Value, 0.00005);
        Assert.Equal(0.0041, correction.StandardUncertainty, 0.00005);
        Assert.Equal(rows[4].Number("computed_u"), correction.StandardUncertainty, 5e-8);
        Assert.Equal(9, correction.DegreesOfFreedom, 1e-9);
    }

    private static MeasurementModel EndGaugeModel(bool fromHalfWidths = false)
    {
        ModelInput[] inputs = [.. EndGauge.Rows
            .Where(row => row.Text("kind") == "input")
            .Select(row => new ModelInput(row.Text("quantity"), Distribution(row, fromHalfWidths)))];
        Expression model = Expression.Parse("ls + d - ls * (da * theta + alpha_s * dtheta)").Value;
        return new MeasurementModel("l", model, inputs, []);
    }

    // Inputs of the example are given by u and degrees of freedom, which a t distribution carries. The published u of
    // 31.71 and 33.91 rest on the rounded u (0.029, 0.58e-6), the contributions of table H.1 on the half-widths.
    private static InputDistribution Distribution(ReferenceRow row, bool fromHalfWidths)
    {
        const string rectangular = "rect half-width ";
        string note = row.Text("note");
        double u = fromHalfWidths && note.StartsWith(rectangular, StringComparison.Ordinal)
            ? double.Parse(note[rectangular.Length..].Split(';')[0], CultureInfo.InvariantCulture) / Math.Sqrt(3)
            : row.Number("u");
        return row.Has("dof")
            ? new StudentTInput(row.Number("value"), u, row.Number("dof"))
            : new NormalInput(row.Number("value"), u);
    }

    private static UncertainValue[] Impedance(bool correlated)
    {
        ReferenceTable data = ReferenceTable.Read("gum_h2_data.csv");
        double[][] columns = [.. new[] { "V", "I_mA", "phi" }.Select(data.Column)];
        UncertainInput[] inputs = [.. columns.Select((column, i) =>
            new UncertainInput($"series {i}", column.Average(), Math.Sqrt(Product(column, column) / 20), 4))];
        var r = new double[3, 3];
        for (int i = 0; i < 3; i++)
        {
            for (int j = 0; j < 3; j++)
            {
                double scale = Math.Sqrt(Product(columns[i], columns[i]) * Product(columns[j], columns[j]));
                r[i, j] = i == j ? 1 : correlated ? Product(columns[i], columns[j]) / scale : 0;
            }
        }

        return ResistanceReactanceImpedance(UncertainValue.Correlated(inputs, r));
    }

    private static UncertainValue[] ResistanceReactanceImpedance(IReadOnlyList<UncertainValue> x)
    {
        (UncertainValue volts, UncertainValue amperes, UncertainValue phase) = (x[0], x[1] / 1000, x[2]);
        UncertainValue impedance = volts / amperes;
        double angle = phase.Value;
        UncertainValue cosine = UncertainValue.Combine(Math.Cos(angle), [phase], [-Math.Sin(angle)]);
        UncertainValue sine = UncertainValue.Combine(Math.Sin(angle), [phase], [Math.Cos(angle)]);
        return [impedance * cosine, impedance * sine, impedance];
    }

    // Sum of products of deviations from the means.
    private static double Product(double[] left, double[] right)
        => left.Zip(right, (x, y) => (x - left.Average()) * (y - right.Average())).Sum();
}
