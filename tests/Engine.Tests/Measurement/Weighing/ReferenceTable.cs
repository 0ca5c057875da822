namespace Calx.Engine.Tests.Measurement.Weighing;

/// <summary>The rows of a file in tests/reference: comment lines and the heading left out.</summary>
internal static class ReferenceTable
{
    public static IEnumerable<string[]> Rows(string file) =>
        File.ReadLines(Path.Combine(AppContext.BaseDirectory, "reference", file))
            .Where(line => line.Length > 0 && !line.StartsWith('#'))
            .Skip(1)
            .Select(line => line.Split(','));
}
