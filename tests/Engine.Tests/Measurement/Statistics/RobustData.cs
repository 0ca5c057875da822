namespace Calx.Engine.Tests.Measurement.Statistics;

/// <summary>The example data of robust statistics; sources in the head of tests/reference/robust_data.csv.</summary>
internal static class RobustData
{
    public static double[] Of(string dataset) =>
        [.. ReferenceTable.Read("robust_data.csv").Rows
            .Where(row => row.Text("dataset") == dataset)
            .Select(row => row.Number("value"))];
}
