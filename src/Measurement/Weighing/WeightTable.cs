using System.Globalization;

namespace Calx.Measurement.Weighing;

/// <summary>OIML R 111-1:2004, Table 1, 1 mg to 1 kg, as text: a fact that can be compared with the page.</summary>
internal static class WeightTable
{
    // Nominal mass in g, then limits in mg for E1 E2 F1 F2 M1 M2 M3; '-' where the class is not defined.
    private const string Text =
        """
        0.001 0.003 0.006 0.020 0.06 0.20 -   -
        0.002 0.003 0.006 0.020 0.06 0.20 -   -
        0.005 0.003 0.006 0.020 0.06 0.20 -   -
        0.01  0.003 0.008 0.025 0.08 0.25 -   -
        0.02  0.003 0.010 0.03  0.10 0.3  -   -
        0.05  0.004 0.012 0.04  0.12 0.4  -   -
        0.1   0.005 0.016 0.05  0.16 0.5  1.6 -
        0.2   0.006 0.020 0.06  0.20 0.6  2.0 -
        0.5   0.008 0.025 0.08  0.25 0.8  2.5 -
        1     0.010 0.03  0.10  0.3  1.0  3.0 10
        2     0.012 0.04  0.12  0.4  1.2  4.0 12
        5     0.016 0.05  0.16  0.5  1.6  5.0 16
        10    0.020 0.06  0.20  0.6  2.0  6.0 20
        20    0.025 0.08  0.25  0.8  2.5  8.0 25
        50    0.03  0.10  0.3   1.0  3.0  10  30
        100   0.05  0.16  0.5   1.6  5.0  16  50
        200   0.10  0.3   1.0   3.0  10   30  100
        500   0.25  0.8   2.5   8.0  25   80  250
        1000  0.5   1.6   5.0   16   50   160 500
        """;

    private static readonly double[][] Table = Read();

    public static double? LimitInMilligrams(WeightClass weightClass, double nominalInGrams)
    {
        double[]? row = Array.Find(Table, row => Math.Abs(row[0] - nominalInGrams) <= 1e-9 * row[0]);
        double limit = row?[1 + (int)weightClass] ?? double.NaN;
        return double.IsNaN(limit) ? null : limit;
    }

    private static double[][] Read() =>
        [.. Text.Split('\n').Select(line => line
            .Split(' ', StringSplitOptions.RemoveEmptyEntries | StringSplitOptions.TrimEntries)
            .Select(cell => cell == "-" ? double.NaN : double.Parse(cell, CultureInfo.InvariantCulture))
            .ToArray())];
}
