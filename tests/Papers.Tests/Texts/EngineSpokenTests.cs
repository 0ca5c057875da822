using System.Collections;
using System.Reflection;
using System.Text;
using System.Text.RegularExpressions;
using Calx.Chemistry.Elements;
using Calx.Measurement.Numbers;
using Calx.Measurement.Weighing;
using Calx.Papers.Tables;
using Calx.Papers.Tests.Reports;
using Calx.Practicals.Clock;
using Calx.Practicals.Definition;
using Calx.Practicals.Findings;
using Calx.Practicals.Findings.History;
using Calx.Practicals.Inference;
using Calx.Practicals.Marking.Ideas;
using Calx.Practicals.Model;
using Calx.Practicals.Planning;
using Calx.Practicals.Readings;
using Calx.Practicals.Texts;
using Calx.Practicals.Watching;

namespace Calx.Papers.Tests.Texts;

/// <summary>
/// What the engine works out in a second language has no sentence in the first: whatever its answers hold is looked at, not only what papers
/// show of it. No text stands in its code (see <see cref="LiteralTests"/>), so that English could only come from the language that was asked.
/// </summary>
public sealed class EngineSpokenTests
{
    /// <summary>Pieces of the engine's texts that are long enough to be told from what a practical says.</summary>
    private static readonly string[] English =
    [
        .. TextTopic.All.Where(t => t.Library == TextTopic.Engine).SelectMany(t => t.Texts).SelectMany(t => Regex.Split(t.Value, @"\{\d+\}"))
            .Select(p => p.Trim(' ', ',', ';', ':', '.', '(', ')', '\'')).Where(p => p.Length >= 8 && p.Contains(' ', StringComparison.Ordinal)).Distinct()
            .Where(p => BuiltInPracticals.Ids.All(id => !BuiltInPracticals.Find(id)!.SourceText.Contains(p, StringComparison.OrdinalIgnoreCase))),
    ];

    private static EngineLanguage Invented => PseudoLanguage.Engine;

    [Fact]
    public void A_class() => AssertForeign(
        from findings in new[] { Analysed.Twelve, Analysed.WithCauses, Analysed.Hostile, Analysed.AllOdd, Analysed.Sound(1), Analysed.Sound(3), Analysed.Sound(36), Analysed.Heated(6, 7) }
        let said = PseudoEngine.In(findings)
        from text in Held(said).Concat(TalkingPoints.Of(said).SelectMany(Held)).Concat(InShort.Of(said, accepted: true))
        select text);

    /// <summary>The judge sees English.</summary>
    [Fact]
    public void English_is_seen()
    {
        Assert.NotEmpty(EnglishIn(Held(Analysed.WithCauses)));
        Assert.NotEmpty(EnglishIn(Held(Planned.Easy)));
        Assert.NotEmpty(EnglishIn(Held(Read(Untidy, EngineLanguage.British))));
    }

    [Fact]
    public void A_text_that_the_second_language_lacks_comes_in_English()
    {
        EngineLanguage without = PseudoLanguage.EngineWithout("CommonTexts.TwoDecimals");
        Assert.Equal("two decimals", DecimalsInWords.Of(2, without));
        Assert.Equal(PseudoLanguage.Spoken("three decimals"), DecimalsInWords.Of(3, without));
    }

    [Fact]
    public void A_plan_and_its_ways_out() => AssertForeign(
        from plan in Planned.All.Append(Planned.Magnesium(2))
        from text in Held(PseudoEngine.In(plan))
        select text);

    [Fact]
    public void Packs_for_those_who_were_away() => AssertForeign(PseudoEngine.Packs.Values.SelectMany(packs => packs.SelectMany(Held)));

    /// <summary>Simulated and joined groups, cells that are no numbers, columns that cannot be.</summary>
    [Fact]
    public void What_is_noted_of_a_file()
    {
        ClassReadings readings = Read(Untidy, Invented);
        Assert.True(readings.Notes.Count >= 6, string.Join('\n', readings.Notes.Select(n => n.Text)));
        Assert.True(readings.Rejected.Select(r => r.Reason).Distinct().Count() >= 6, string.Join('\n', readings.Rejected.Select(r => r.Reason)));
        AssertForeign(Held(readings));
        AssertForeign(UncountedWords.Of([.. readings.Uncounted, new UncountedGroup.Joined("Oak", "3"), new UncountedGroup.Joined("4", "Yew")], Invented));
        AssertForeign(readings.Balance.SentenceIn(Invented));
        string[] unreadable = ["a,b\n1,2\n", "Group,empty,empty,before\n1,2,3,4\n", "Mass of empty crucible and lid,1,2\nMass after heating,3,4\n"];
        AssertForeign(unreadable.Select(u => Assert.IsType<ClassReading.Unreadable>(ClassTableReader.Read(Opened(u), Magnesium, language: Invented)).Reason));
    }

    [Fact]
    public void What_years_show()
    {
        Practical practical = Magnesium;
        LessonResult Lesson(int year, double value) =>
            new($"{year}", new DateOnly(year, 6, 1), value, 0.02, new Calx.Measurement.Uncertainty.CoverageInterval(value - 0.04, value + 0.04, 0.95));
        ResultHistory[] results =
        [
            ResultHistory.Of(practical, [], 1, Invented), ResultHistory.Of(practical, [Lesson(2020, 1)], 1, Invented),
            ResultHistory.Of(practical, [Lesson(2020, 1), Lesson(2021, 1.01), Lesson(2022, 0.99)], 1, Invented),
            ResultHistory.Of(practical, [Lesson(2020, 1.1), Lesson(2021, 1.3), Lesson(2022, 1.5)], 1, Invented),
        ];
        WrittenNumber Number(string text) => WrittenNumber.TryParse(text, out WrittenNumber number) ? number : default;
        BalanceCheckMade Check(int day, string shown) => new(new DateOnly(2026, 1, day), Number("50.00"), Number(shown));
        string[][] checks = [[], ["50.00"], ["50.03"], ["50.00", "50.01", "50.02", "50.03"], ["50.00", "49.99", "50.00", "51.00"]];
        AssertForeign(results.SelectMany(Held));
        AssertForeign(checks.SelectMany(c => Held(BalanceHistory.Of(new Balance(0.01), [.. c.Select((shown, i) => Check(i + 1, shown))], Invented))));
    }

    [Fact]
    public void A_lesson_while_it_runs()
    {
        PlanSettings plan = new PlanSettings(Magnesium, 12, [new Balance(0.01), new Balance(0.01)], 100).WithPrepared(true).WithLanguage(Invented);
        var watch = new LessonWatch(plan, AtomicWeights.Iupac2024, seed: 5);
        GroupAtWork[] groups =
        [
            Group(1, "empty=28.60 before=28.84 after=28.89 after2=28.93"), Group(2, "empty=28.60 before=28.84 after=28.99 after2=29.00"),
            Group(3, "empty=15.10 before=15.34 after=51.74"), Group(4, ""), Group(5, "empty=28.6 before=28.8 after=28.9", new GroupCalls(help: 40)),
            Group(6, "empty=28.60", new GroupCalls(correction: 70)), Group(7, "empty=28.60", new GroupCalls(broken: 20)),
            Group(8, "empty=28.60 before=28.84 after=28.89", new GroupCalls(queries: 2)),
        ];
        foreach (double now in new[] { 30.0, 71, 90 })
        {
            var moment = new LessonMoment(now, 100, 10, 70);
            foreach (GroupAtWork group in groups)
            {
                Advice advice = watch.AdviceFor(group, moment);
                AssertForeign(Held(advice).Concat(Held(watch.AttentionFor(group, advice, moment))).Concat(Held(watch.Now(group, moment, true)))
                    .Append(advice.ForStudent(false, false) ?? "").Append(advice.ForStudent(false, true) ?? ""));
            }

            LessonOutlook outlook = watch.Outlook(groups, moment, 20);
            AssertForeign(Held(outlook).Concat(outlook.SentencesWith(g => $"{g}")));
        }

        for (int i = 0; i < 40; i++)
        {
            AssertForeign(Held(watch.QueryFor(groups[3], new Weighing("empty", 1), new WrittenNumber(28.6m + i), (UInt128)i << 70)));
        }

        AssertForeign(CautionsOfSteps.Of(plan, AtomicWeights.Iupac2024).Values.SelectMany(c => c));
    }

    private static Practical Magnesium => BuiltInPracticals.Find("magnesium-oxide")!;

    private const string Untidy = """
        Group,Trial,empty,before,after,after 2,observations,Mystery
        Ash,1,30.10,30.34,30.49,30.50,white smoke,x
        Cedar,1,28.77,29.02,28.70,28.70,,
        Cedar,1,28.77,29.02,,,,
        Elm,1,1e5,#REF!,nan,abc,,
        Fir,1,28.77,-5,29.18,29.1 8,,
        ,1,28.77,29.02,29.18,29.18,,
        ,,28.77,29.02,29.18,29.40,,
        Gorse,1,"28,77","1,234.5",29.18 s,29.18,flame out 3 min,
        Ivy (simulated),1,28.77,29.02,29.18,29.18,,
        Juniper,1,,,,,nothing,
        Group,Trial,empty,before,after,after 2,observations,Mystery
        Mean,,28.77,29.02,29.18,29.18,,
        """;

    private static ClassReadings Read(string csv, EngineLanguage language) =>
        Assert.IsType<ClassReading.Taken>(ClassTableReader.Read(Opened(csv), Magnesium, language: language)).Readings;

    private static IReadOnlyList<CellTable> Opened(string csv) =>
        Assert.IsType<TableFile.Opened>(TableFile.Read(new MemoryStream(Encoding.UTF8.GetBytes(csv)))).Sheets;

    private static GroupAtWork Group(int number, string readings, GroupCalls? calls = null)
    {
        string[][] parts = [.. readings.Split(' ', StringSplitOptions.RemoveEmptyEntries).Select(r => r.Split('='))];
        TakenReading[] taken =
        [
            .. parts.Select(p => new TakenReading(
                p[0].TrimEnd('2'), p[0].EndsWith('2') ? 2 : 1, WrittenNumber.TryParse(p[1], out WrittenNumber grams) ? grams : default)),
        ];
        return new GroupAtWork(
            number, 1, new Balance(number == 5 ? 0.1 : 0.01), new GroupReadings($"G{number}", null, taken),
            new GroupMoments(taken.Select((t, i) => (t.Id, At: 15.0 + (8 * i))).ToDictionary(t => t.Id, t => t.At)), calls: calls);
    }

    private static void AssertForeign(params IEnumerable<string> said) => Assert.Empty(EnglishIn(said));

    private static IEnumerable<string> EnglishIn(IEnumerable<string> said)
    {
        string[] all = [.. said.Distinct()];
        return from text in all from piece in English where text.Contains(piece, StringComparison.Ordinal) select $"{piece}: {text}";
    }

    /// <summary>Every text that an answer of the engine holds, but for what the practical itself says.</summary>
    private static List<string> Held(object answer)
    {
        var texts = new List<string>();
        Collect(answer, new HashSet<object>(ReferenceEqualityComparer.Instance), texts);
        return texts;
    }

    private static void Collect(object? value, HashSet<object> seen, List<string> texts)
    {
        switch (value)
        {
            case null or Idea: break;
            case string text: texts.Add(text); break;
            case IEnumerable many:
                foreach (object? one in many)
                {
                    Collect(one, seen, texts);
                }

                break;
            default:
                Type type = value.GetType();
                bool own = type.Namespace?.StartsWith("Calx.Practicals", StringComparison.Ordinal) == true && type.Namespace != typeof(Practical).Namespace;
                if (own && !type.IsEnum && (type.IsValueType || seen.Add(value)))
                {
                    foreach (PropertyInfo property in type.GetProperties(BindingFlags.Public | BindingFlags.Instance).Where(p => p.GetIndexParameters().Length == 0))
                    {
                        Collect(property.GetValue(value), seen, texts);
                    }
                }

                break;
        }
    }
}
