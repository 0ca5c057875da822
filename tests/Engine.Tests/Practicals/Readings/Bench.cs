using Calx.Practicals.Readings;

namespace Calx.Engine.Tests.Practicals.Readings;

/// <summary>Invented class tables for the tests, written with bars between cells, and what is expected of them.</summary>
internal static class Bench
{
    public static ExpectedTable Magnesium { get; } = new(
        "magnesium-oxide",
        [
            new("empty", "Mass of empty crucible and lid", ExpectedKind.Weighing,
                ["empty", "crucible", "crucible and lid", "empty crucible", "crucible empty", "m1"],
                limits: new(18, 45)),
            new("before", "Mass of crucible, lid and magnesium", ExpectedKind.Weighing,
                ["before", "before heating", "mass before heating", "crucible and magnesium", "crucible + magnesium", "m2"],
                limits: new(18, 45, ["empty"])),
            new("after", "Mass after heating", ExpectedKind.Weighing,
                ["after", "after heating", "reheated", "crucible and magnesium oxide", "crucible + magnesium oxide", "m3"],
                repeats: 3, repeatLabel: "Mass after reheating", limits: new(18, 45, ["empty"])),
            new("sampleColumn", "Mass of magnesium", ExpectedKind.Difference,
                ["magnesium", "mass of mg", "sample", "sample mass", "mass of sample", "mg"], limits: new(18, 45)),
            new("productColumn", "Mass of magnesium oxide", ExpectedKind.Difference,
                ["magnesium oxide", "mass of mgo", "mass of oxide", "product", "mass of product", "mgo"], limits: new(18, 45)),
            new("gainColumn", "Mass of oxygen", ExpectedKind.Difference,
                ["oxygen", "gain", "mass gained", "increase in mass", "mass of oxygen gained"],
                limits: new(18, 45, mayBeNegative: true)),
        ],
        ["crucible", "lid"],
        new Dictionary<string, string> { ["Mg"] = "magnesium", ["MgO"] = "magnesium oxide" });

    /// <summary>A sheet from lines of cells with bars between them; line 1 is row 1.</summary>
    public static CellTable Table(string text, string sheet = "", bool decimalsShown = true)
    {
        List<CellRow> rows = [];
        string[] lines = text.Split('\n');
        for (int i = 0; i < lines.Length; i++)
        {
            string[] cells = lines[i].Split('|');
            rows.Add(new CellRow(i + 1, [.. cells
                .Select((cell, at) => new TableCell(at + 1, cell.Trim(' '), decimalsShown))
                .Where(cell => cell.Text.Length > 0)]));
        }
        return new CellTable(sheet, rows);
    }

    public static ClassReadings Read(string text, BalanceOptions? options = null) => Read([Table(text)], options);

    public static ClassReadings Read(IReadOnlyList<CellTable> sheets, BalanceOptions? options = null)
    {
        ClassReading reading = ClassTableReader.Read(sheets, Magnesium, options);
        return reading is ClassReading.Taken taken
            ? taken.Readings
            : throw new Xunit.Sdk.XunitException("Not read: " + ((ClassReading.Unreadable)reading).Reason);
    }

    public static ClassReading.Unreadable Refused(string text) =>
        Assert.IsType<ClassReading.Unreadable>(ClassTableReader.Read([Table(text)], Magnesium));

    /// <summary>What the columns were taken for, in order.</summary>
    public static string Meanings(ClassReadings readings) => string.Join(" ", readings.Columns.Select(c => c.Meaning.Word));

    /// <summary>The headings' meanings, with numbers below that suit them.</summary>
    public static string MeaningsOf(string headings)
    {
        string cells = string.Join("|", headings.Split('|').Select((_, i) => i == 0 ? "1" : ""));
        return Meanings(Read(headings + "\n" + cells));
    }

    /// <summary>The readings of one group: <c>empty 30.10, before 30.34</c>.</summary>
    public static string Of(GroupReadings group) =>
        string.Join(", ", group.Readings.Concat(group.DerivedColumns).Select(r => $"{r.Id} {r.Value}"));
}
