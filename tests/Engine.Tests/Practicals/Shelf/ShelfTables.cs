using System.Globalization;

namespace Calx.Engine.Tests.Practicals.Shelf;

/// <summary>Values of the whole shelf that were worked out apart from this program: tests/reference/shelf_*.csv, by the scripts
/// of the same names.</summary>
internal static class ShelfTables
{
    /// <summary>The accepted value of one quantity.</summary>
    /// <param name="Practical">Id of the practical.</param>
    /// <param name="Quantity">Id of the quantity.</param>
    /// <param name="Value">As written, for its digits.</param>
    /// <param name="Source">Where it is from.</param>
    internal sealed record Theory(string Practical, string Quantity, string Value, string Source);

    /// <summary>Readings of one group with what follows from them.</summary>
    /// <param name="Practical">Id of the practical.</param>
    /// <param name="Readings">As written, by id.</param>
    /// <param name="Expected">As written, by quantity.</param>
    internal sealed record Example(string Practical, IReadOnlyDictionary<string, string> Readings, IReadOnlyDictionary<string, string> Expected);

    public static IReadOnlyList<Theory> Theories { get; } =
        [.. Rows("shelf_theory").Select(c => new Theory(c[0], c[1], c[2], string.Join(',', c.Skip(4))))];

    public static IReadOnlyList<Example> Examples { get; } = [.. Rows("shelf_examples").Select(c => new Example(c[0], Pairs(c[1]), Pairs(c[2])))];

    /// <summary>Half of the last digit written, and what the fifth figure of an abridged atomic weight leaves open: the program keeps all
    /// that are published, as 126.90447 where the abridged table has 126.90.</summary>
    public static double Tolerance(string written)
    {
        string digits = written.Split('e', 'E')[0];
        int decimals = digits.Contains('.', StringComparison.Ordinal) ? digits.Length - digits.IndexOf('.', StringComparison.Ordinal) - 1 : 0;
        return (0.5 * Math.Pow(10, -decimals)) + (5e-5 * Math.Abs(Number(written)));
    }

    public static double Number(string written) => double.Parse(written, CultureInfo.InvariantCulture);

    private static IEnumerable<string[]> Rows(string kind) =>
        from file in Directory.GetFiles("reference", $"{kind}*.csv").Order(StringComparer.Ordinal)
        from line in File.ReadLines(file)
        where line.Length > 0 && !line.StartsWith('#') && !line.StartsWith("practical,", StringComparison.Ordinal)
        select line.Split(',');

    private static Dictionary<string, string> Pairs(string cell) =>
        cell.Split(';', StringSplitOptions.RemoveEmptyEntries | StringSplitOptions.TrimEntries).Select(p => p.Split('=')).ToDictionary(p => p[0].Trim(), p => p[1].Trim());
}
