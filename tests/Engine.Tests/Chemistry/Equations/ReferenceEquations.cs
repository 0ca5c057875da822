using System.Globalization;

namespace Calx.Engine.Tests.Chemistry.Equations;

/// <summary>Rows of tests/reference/equations_*.csv; the heads of the files name their sources.</summary>
internal static class ReferenceEquations
{
    public static string[][] Rows(string file) =>
        [.. File.ReadLines(Path.Combine(AppContext.BaseDirectory, "reference", file))
            .Where(line => line[0] != '#').Skip(1).Select(line => line.Split(','))];

    public static long[] Numbers(string text)
        => [.. text.Split(' ').Select(number => long.Parse(number, CultureInfo.InvariantCulture))];
}
