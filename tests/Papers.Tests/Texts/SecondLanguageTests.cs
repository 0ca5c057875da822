using System.Collections;
using System.Globalization;
using System.IO.Compression;
using System.Reflection;
using System.Text.RegularExpressions;
using Calx.Chemistry.Formulas;
using Calx.Papers.Documents;
using Calx.Papers.Documents.Html;
using Calx.Papers.Documents.Word;
using Calx.Papers.Handouts;
using Calx.Papers.Texts;
using Calx.Papers.Tests.Handouts;
using Calx.Practicals.Definition;
using Calx.Practicals.Planning;
using Calx.Practicals.Readings;
using Calx.Practicals.Texts;

namespace Calx.Papers.Tests.Texts;

/// <summary>A second language can follow: papers take their texts from the language that they are given, and from nowhere else.</summary>
public sealed partial class SecondLanguageTests
{
    private static readonly SupportLevel[] Levels = Enum.GetValues<SupportLevel>();

    [Theory]
    [MemberData(nameof(Practicals))]
    public void A_student_sheet_is_wholly_in_the_second_language(string id)
    {
        PaperSetting setting = Setting(id, PseudoLanguage.Of());
        foreach (Paper sheet in Levels.Select(l => StudentSheet.Of(setting, l)))
        {
            Assert.Empty(PlainIn([.. Written.LinesOf(sheet), sheet.Heads.Left, sheet.Heads.Foot, sheet.Heads.Draft!], setting));
        }
    }

    /// <summary>The judge above sees a text that was not taken from the language.</summary>
    [Fact]
    public void A_text_that_the_second_language_lacks_is_seen_and_comes_in_English()
    {
        PaperSetting setting = Setting("magnesium-oxide", PseudoLanguage.Of(without: "StudentSheetTexts.StepsHeading"));
        string[] plain = [.. PlainIn(Written.LinesOf(StudentSheet.Of(setting, SupportLevel.Guided)), setting)];
        Assert.Equal(["What", "you", "do"], plain);
    }

    [Theory]
    [MemberData(nameof(Practicals))]
    public void Every_other_paper_is_in_it_but_for_the_sentences_of_practical_and_engine(string id)
    {
        PaperSetting setting = Setting(id, PseudoLanguage.Of());
        IReadOnlyList<Paper> papers =
            PaperSet.Of(setting, [PaperKind.Requisition, PaperKind.Key, PaperKind.Risk, PaperKind.Lesson], [SupportLevel.Open]).Documents;
        Assert.All(papers, p => Assert.Empty(PlainIn(
            [.. Written.LinesOf(p), p.Heads.Left, p.Heads.Foot, p.Heads.Draft!], setting)));
    }

    [Fact]
    public void Files_say_their_language()
    {
        Paper sheet = StudentSheet.Of(Setting("magnesium-oxide", PseudoLanguage.Of()), SupportLevel.Open);
        Assert.Contains("<html lang=\"en-XA\">", PaperHtml.Of(sheet), StringComparison.Ordinal);
        using var word = new ZipArchive(new MemoryStream(PaperWord.Of(sheet)));
        Assert.Contains("w:val=\"en-XA\"", Part(word, "word/styles.xml"), StringComparison.Ordinal);
        Assert.Contains("<dc:language>en-XA</dc:language>", Part(word, word.Entries.Single(e => e.Name == "core.xml" || e.FullName.EndsWith(".psmdcp", StringComparison.Ordinal)).FullName), StringComparison.Ordinal);
    }

    [Fact]
    public void Papers_do_not_take_the_language_of_the_machine()
    {
        byte[][] here = Everything();
        (CultureInfo culture, CultureInfo texts) = (CultureInfo.CurrentCulture, CultureInfo.CurrentUICulture);
        try
        {
            var german = new CultureInfo("de-DE") { NumberFormat = { NumberDecimalSeparator = ",", NumberGroupSeparator = "." } };
            Assert.Equal("0,5", 0.5.ToString(german));
            (CultureInfo.CurrentCulture, CultureInfo.CurrentUICulture) = (german, german);
            Assert.Equal(here, Everything());
        }
        finally
        {
            (CultureInfo.CurrentCulture, CultureInfo.CurrentUICulture) = (culture, texts);
        }
    }

    public static TheoryData<string> Practicals() => [.. Shelf.Three];

    private static byte[][] Everything()
    {
        PaperSet papers = PaperSet.Of(Setting("magnesium-oxide", PaperLanguage.BritishEnglish), Enum.GetValues<PaperKind>(), Levels);
        return [.. papers.Documents.Select(d => PaperWord.Of(d)), System.Text.Encoding.UTF8.GetBytes(PaperHtml.Of([.. papers.Documents])), .. papers.Workbooks.Select(b => b.Bytes())];
    }

    private static PaperSetting Setting(string id, PaperLanguage language) =>
        new(
        language.Engine == EngineLanguage.British ? StudentSheetTests.Plans[id] : PseudoEngine.Plans[id],
        PaperOccasion.Unsaid, PaperLook.Usual with { Language = language }, isChecked: false);

    /// <summary>English words that neither the practical nor the engine said: whoever wrote them into the code of papers did not ask
    /// the language.</summary>
    /// <param name="lines">What is looked at.</param>
    /// <param name="setting">For which lesson.</param>
    /// <param name="more">What else the engine said, and names of people.</param>
    private static IEnumerable<string> PlainIn(IEnumerable<string> lines, PaperSetting setting, params IEnumerable<string> more)
    {
        string[] own = [.. OfPractical(setting.Practical).Concat(OfEngine(setting.Plan)).Concat(more).Distinct(StringComparer.OrdinalIgnoreCase).OrderByDescending(t => t.Length)];
        return lines.SelectMany(line => Word().Matches(own.Aggregate(line, (left, text) => Without(left, text))).Select(m => m.Value));
    }

    /// <summary>A line without another text, where that stands in whole words.</summary>
    private static string Without(string line, string text) => line.Contains(text, StringComparison.OrdinalIgnoreCase)
        ? Regex.Replace(line, $@"(?<!\p{{L}}){Regex.Escape(text)}(?!\p{{L}})", "§", RegexOptions.IgnoreCase | RegexOptions.CultureInvariant) : line;

    /// <summary>Every text of a practical, in pieces where an amount is put in.</summary>
    private static IEnumerable<string> OfPractical(Practical practical)
    {
        var seen = new HashSet<object>(ReferenceEqualityComparer.Instance);
        var texts = new List<string>();
        Collect(practical, seen, texts);
        return texts.Where(t => t != practical.SourceText).SelectMany(t => t.Split([SheetStep.Sample, SheetStep.Cooling], StringSplitOptions.TrimEntries)).Where(t => t.Length > 1);
    }

    private static void Collect(object? value, HashSet<object> seen, List<string> texts)
    {
        switch (value)
        {
            case null: break;
            case string text: texts.Add(text); break;
            case IEnumerable many:
                foreach (object? one in many)
                {
                    Collect(one, seen, texts);
                }

                break;
            default:
                if (value.GetType().Namespace == typeof(Practical).Namespace && !value.GetType().IsEnum && seen.Add(value))
                {
                    foreach (PropertyInfo property in value.GetType().GetProperties(BindingFlags.Public | BindingFlags.Instance).Where(p => p.GetIndexParameters().Length == 0))
                    {
                        Collect(property.GetValue(value), seen, texts);
                    }
                }

                break;
        }
    }

    /// <summary>What the libraries below name in the practical's words: readings and steps, and formulas.</summary>
    private static IEnumerable<string> OfEngine(Plan plan)
    {
        Practical practical = plan.Settings.Practical;
        return
        [
            .. practical.Readings.SelectMany(r => Enumerable.Range(1, 5).Select(n => ReadingNames.Of(practical, r.Id, n))),
            .. practical.Readings.Select(r => ReadingNames.OfId(practical, r.Id)),
            .. practical.Answers.SelectMany(a => a.Formula.MolarMasses).SelectMany(f => (string[])[f, Formula.Parse(f).Value!.ToUnicode()]),
            .. plan.Lesson.Typical.Bars.Select(b => b.Label),
        ];
    }

    private static string Part(ZipArchive file, string name)
    {
        using var reader = new StreamReader(file.GetEntry(name)!.Open());
        return reader.ReadToEnd();
    }

    [GeneratedRegex(@"[A-Za-z]{2,}", RegexOptions.CultureInvariant)]
    private static partial Regex Word();
}
