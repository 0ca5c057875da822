using System.Globalization;
using Calx.Practicals.Definition;
using Calx.Practicals.Readings;

namespace Calx.Engine.Tests.Practicals.Series;

/// <summary>The practical with marble chips, and tables of invented groups whose masses follow a rate law written out here.</summary>
internal static class Marble
{
    public static Practical Practical => BuiltInPracticals.Find("marble-and-acid")!;

    /// <summary>What is left of a change after so many minutes, by the law of the order: an exponential or a hyperbola.</summary>
    public static double Left(int order, double minutes, double halfLife) =>
        order == 1 ? Math.Pow(2, -minutes / halfLife) : 1 / (1 + (minutes / halfLife));

    /// <summary>Mass at a time with two decimals: 136.50 g and 0.84 g to lose.</summary>
    public static string Mass(int order, double minutes, double halfLife, double loss = 0.84) =>
        (136.50 - (loss * (1 - Left(order, minutes, halfLife)))).ToString("F2", CultureInfo.InvariantCulture);

    /// <summary>A class's table from lines with bars between the cells.</summary>
    public static ClassReadings Read(params string[] lines) => Assert.IsType<ClassReading.Taken>(ClassTableReader.Read(
        [new CellTable(string.Empty, [.. lines.Select((line, i) => CellRow.Of(i + 1, [.. line.Split('|').Select(c => c.Trim())]))])], Practical)).Readings;

    /// <summary>One group's table with a column for each half minute.</summary>
    public static string[] Wide(Func<double, string> mass) =>
    [
        "group | Mass of flask and wool plug / g | Mass of flask, plug and acid / g | " + string.Join(" | ", Times.Select(t => $"{t.ToString(CultureInfo.InvariantCulture)} min")),
        "1 | 78.40 | 119.06 | " + string.Join(" | ", Times.Select(mass)),
    ];

    /// <summary>The planned times in min.</summary>
    public static double[] Times { get; } = [.. Enumerable.Range(0, 21).Select(i => i / 2.0)];
}
