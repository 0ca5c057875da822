using System.Globalization;
using System.Text;
using Calx.Chemistry.Elements;
using Calx.Measurement.Numbers;
using Calx.Papers.Tables;
using Calx.Practicals.Definition;
using Calx.Practicals.Findings;
using Calx.Practicals.Readings;
using Calx.Practicals.Texts;

namespace Calx.Papers.Tests.Reports;

/// <summary>Invented classes, read and analysed as the program does it.</summary>
internal static class Analysed
{
    private static Practical Magnesium => BuiltInPracticals.Find("magnesium-oxide")!;

    private const string Heading = "Group,empty,before,after,after 2\n";

    /// <summary>Twelve groups, four of them odd.</summary>
    public static ClassFindings Twelve => Of(TwelveRows);

    /// <summary>The same, with what probably happened.</summary>
    public static ClassFindings WithCauses { get; } = Of(TwelveRows, causes: true);

    private static string TwelveRows => Heading + string.Join('\n',
        "Amber,27.63,27.90,28.07,28.06", "Birch,29.26,29.52,29.68,29.69", "Cedar,27.93,28.22,28.40,28.41",
        "Dove,28.93,29.21,29.38,17.04", "Elm,33.57,33.84,34.00,34.01", "Finch,30.66,30.19,31.05,31.06",
        "Garnet,29.91,30.18,30.34,30.34", "Heron,30.46,30.73,30.82,30.81", "Ivy,29.80,30.03,30.17,30.17",
        "Juniper,29.49,29.75,29.90,29.91", "Kestrel,27.50,27.77,27.95,27.95", "Lark,31.80,32.06,32.10,32.13");

    /// <summary>So many groups, none odd, their names as given by <paramref name="name"/>.</summary>
    public static ClassFindings Sound(int groups, Func<int, string>? name = null)
    {
        var text = new StringBuilder(Heading);
        for (int i = 0; i < groups; i++)
        {
            decimal sample = 0.20m + (0.01m * (i % 9));
            decimal gain = Math.Round(sample * 0.64m, 2) + (0.01m * ((i % 3) - 1));
            string called = name?.Invoke(i) ?? string.Create(CultureInfo.InvariantCulture, $"Group {i + 1}");
            text.Append(CultureInfo.InvariantCulture, $"\"{called}\",{30.00m + i:F2},{30.00m + i + sample:F2},{30.00m + i + sample + gain:F2},{30.00m + i + sample + gain:F2}\n");
        }

        return Of(text.ToString());
    }

    /// <summary>Groups that heated so many times and saw the same mass each time, as a lesson collects them: more often than
    /// a file's columns may say.</summary>
    public static ClassFindings Heated(int groups, int times)
    {
        GroupReadings[] taken = [.. Enumerable.Range(0, groups).Select(i => HeatedGroup(i, times))];
        var balance = new BalanceReport(new BalanceOptions(0.01m), new Dictionary<string, decimal>());
        return ClassAnalysis.Of(Magnesium, new ClassReadings("magnesium-oxide", taken, balance), AtomicWeights.Iupac2024, new AnalysisOptions(Causes: false, []));
    }

    private static GroupReadings HeatedGroup(int number, int times)
    {
        decimal before = 30.28m + number;
        decimal after = before + 0.17m + (0.01m * (number % 3));
        return new GroupReadings(
            string.Create(CultureInfo.InvariantCulture, $"Group {number + 1}"),
            trial: null,
            [Taken("empty", 1, before - 0.28m), Taken("before", 1, before), .. Enumerable.Range(1, times).Select(n => Taken("after", n, after))]);
    }

    private static TakenReading Taken(string id, int occurrence, decimal grams) =>
        new(id, occurrence, new WrittenNumber(Math.Round(grams, 2)));

    /// <summary>Three groups whose results cannot be.</summary>
    public static ClassFindings AllOdd => Of(Heading + "Ash,27.63,27.90,27.70,27.71\nOak,29.26,29.52,29.30,29.31\nYew,29.26,29.02,29.30,29.31\n");

    /// <summary>Twelve groups whose causes were asked for, some of which left notes; group names hold what HTML takes for
    /// markup.</summary>
    public static ClassFindings Hostile { get; } = Of(
        "Group,empty,before,after,after 2,observations\n" + string.Join('\n',
            "<b>Amber</b>,27.63,27.90,28.07,28.06,", "'><img src=x onerror=look()>,29.26,29.52,29.68,29.69,", "Cedar,27.93,28.22,28.40,28.41,white smoke",
            "Dove,28.93,29.21,29.38,17.04,lid broken", "Elm,33.57,33.84,34.00,34.01,<script>look()</script>", "Finch,30.66,30.19,31.05,31.06,",
            "Garnet,29.91,30.18,30.34,30.34,", "Heron,30.46,30.73,30.82,30.81,", "Ivy,29.80,30.03,30.17,30.17,",
            "Juniper,29.49,29.75,29.90,29.91,", "Kestrel,27.50,27.77,27.95,27.95,", "Lark,31.80,32.06,32.10,32.13,grey specks"), causes: true);

    /// <summary>A class's table as CSV, analysed as burning magnesium or as another practical.</summary>
    public static ClassFindings Of(string csv, bool causes = false, EngineLanguage? language = null, string? practicalId = null)
    {
        Practical practical = practicalId is null ? Magnesium : BuiltInPracticals.Find(practicalId)!;
        using var stream = new MemoryStream(Encoding.UTF8.GetBytes(csv));
        var opened = Assert.IsType<TableFile.Opened>(TableFile.Read(stream));
        var taken = Assert.IsType<ClassReading.Taken>(ClassTableReader.Read(opened.Sheets, practical, language: language));
        return ClassAnalysis.Of(practical, taken.Readings, AtomicWeights.Iupac2024, new AnalysisOptions(causes, []) { Language = language ?? EngineLanguage.British });
    }
}
