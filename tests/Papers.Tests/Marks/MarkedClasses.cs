using System.Globalization;
using Calx.Chemistry.Elements;
using Calx.Papers.Documents;
using Calx.Papers.Handouts;
using Calx.Papers.Marks;
using Calx.Practicals.Definition;
using Calx.Practicals.Marking;
using Calx.Practicals.Marking.Tables;
using Calx.Practicals.Readings;

namespace Calx.Papers.Tests.Marks;

/// <summary>Invented classes, marked. Values worked out by hand with Mg 24.3, O 16.0: 0.24 g and 0.14 g are 0.00988 mol and 0.00875 mol, 1.13 : 1.</summary>
internal static class MarkedClasses
{
    /// <summary>Names that files have trouble with; none stands within another.</summary>
    public static IReadOnlyList<string> OddNames { get; } =
        ["Quill, Ada", "Ned \"Ox\" O’Neil", "=HYPERLINK(\"http://x\",\"y\")", "-1+1", "@SUM(1)", "Jürgen Weiß", "Zoë Ångström", "<b>Bo</b> & Co"];

    public static Practical Practical { get; } = BuiltInPracticals.Find("magnesium-oxide")!;

    private static readonly string[] Values = ["massMagnesium", "massOxygen", "molesMagnesium", "molesOxygen", "ratio"];

    private static readonly string[] Further =
        ["percentOxygen", "yield", "formula", "complete", "oddGroup", "cause", "improvement", "what-happened", "conserved", "all-burnt", "too-little", "better"];

    /// <summary>Ways to answer, with the marks of the five values that they earn: all right, oxygen as molecule and carried, upside down, nothing but
    /// masses, an essay, nothing.</summary>
    public static IReadOnlyList<(string[] Answers, int Marks)> Ways { get; } =
    [
        (["0.24", "0.14", "0.00988", "0.00875", "1.13"], 5),
        (["0.24", "0.14", "0.00988", "0.00438", "2.26"], 4),
        (["0.24", "0.14", "0.00988", "0.00875", "0.886"], 4),
        (["0.24 g", "0,14", "", "", ""], 2),
        (["0.24", "an essay about oxygen", "0.00988", "", ""], 2),
        (["", "", "", "", ""], 0),
    ];

    /// <summary>Students with the readings 30.00, 30.24, 30.38 g, in turn with each of the ways to answer.</summary>
    /// <param name="students">How many.</param>
    /// <param name="isWhole">Whether judgements and questions in words are asked too.</param>
    /// <param name="ids">Whether every other student has an id of the school's system.</param>
    public static MarkedClass Of(int students, bool isWhole = false, bool ids = false, params Overruling[] overrulings)
    {
        string[] asked = isWhole ? [.. Values, .. Further] : Values;
        string[][] rows =
        [
            ["id", "student", "group", "empty", "before", "after", .. asked],
            .. Enumerable.Range(0, students).Select(i => (string[])
            [
                ids && i % 2 == 0 ? Text($"00{i:000}") : "", NameOf(i), Text($"{(i / 3) + 1}"), "30.00", "30.24", "30.38", .. Ways[i % Ways.Count].Answers,
                .. isWhole ? OfFurther(i) : [],
            ]),
        ];
        return Mark(rows, overrulings);
    }

    /// <summary>A table, marked by the usual rules.</summary>
    public static MarkedClass Mark(string[][] rows, params Overruling[] overrulings)
    {
        var taken = Assert.IsType<MarkingTable.Taken>(MarkingTableReader.Read([new CellTable("", [.. rows.Select((r, i) => CellRow.Of(i + 1, r))])], Practical));
        Assert.Empty(taken.Rejected);
        return new Marker(Practical, MarkingPolicy.Usual, [AtomicWeightSets.Named("school-1dp"), AtomicWeights.Iupac2024]).Mark(taken.Works, overrulings, threads: 1);
    }

    /// <summary>A class without anybody in it.</summary>
    public static MarkedClass Nobody() => new Marker(Practical, MarkingPolicy.Usual, [AtomicWeights.Iupac2024]).Mark([]);

    public static string NameOf(int student) => student < OddNames.Count ? OddNames[student] : Text($"Student No {student:00}x");

    public static MarksSetting Setting(PaperLook? look = null) =>
        new(Practical, new PaperOccasion("9F", "26 November 2026", null, null, null, "27 November 2026"), look);

    private static string[] OfFurther(int student) => (student % Ways.Count) switch
    {
        5 => [.. Further.Select(_ => "")],
        0 => ["36.8", "96", "MgO", "complete", "none", "none", "", "The mass rose by 0.14 g, for oxygen joined.", "No atoms were made.", "", "Smoke escaped; after is too small.", "Its weight was wrong, so use more."],
        _ => ["63", "90", "Mg2O3", "no", "4", "blame", "", "It got heavier.", "", "They agree.", "", ""],
    };

    private static string Text(FormattableString text) => text.ToString(CultureInfo.InvariantCulture);
}
