using System.Globalization;
using Calx.Papers.Documents;
using Calx.Papers.Documents.Html;
using Calx.Papers.Documents.Word;
using Calx.Papers.Marks;
using Calx.Papers.Tests.Handouts;
using Calx.Practicals.Marking;
using DocumentFormat.OpenXml.Packaging;
using DocumentFormat.OpenXml.Validation;

namespace Calx.Papers.Tests.Marks;

/// <summary>What students get back on paper.</summary>
public sealed class FeedbackSlipsTests
{
    [Fact]
    public void Each_student_has_a_slip_with_name_practical_day_total_answers_and_sentences()
    {
        MarkedClass marked = MarkedClasses.Of(8);
        string[] slips = Slips(marked);
        for (int i = 0; i < 8; i++)
        {
            string slip = slips[i];
            MarkedWork work = marked.Works[i];
            Assert.StartsWith(MarkedClasses.NameOf(i), slip, StringComparison.Ordinal);
            Assert.Contains($"{MarkedClasses.Practical.Title} · 9F · 26 November 2026", slip, StringComparison.Ordinal);
            string total = !work.IsHandedIn ? "not handed in" : $"{MarkedClasses.Ways[i % 6].Marks} of 5 marks{(work.IsFinal ? "" : " so far")}";
            Assert.Contains($"\n{total}\n", slip, StringComparison.Ordinal);
            Assert.Contains($"\n{work.Feedback}", slip, StringComparison.Ordinal);
            Assert.All(work.Answers, a => Assert.Contains(
                $"\n{Capital(MarksSetting.Asked(a.Answer)).Replace('\u00a0', ' ')}\n{(a.Given.Length == 0 ? "nothing" : a.Given)}\n{(a.IsUnread ? "not yet" : $"{a.Marks} of 1")}\n", slip, StringComparison.Ordinal));
        }
    }

    [Fact]
    public void A_slip_tells_no_expected_value_and_nothing_of_others()
    {
        // 28.564 - 28.37 is 0.194; 0.194 / 16.00 is 0.012125, which the copier wrote.
        MarkedClass marked = MarkedClasses.Mark(
        [
            ["student", "group", "empty", "before", "after", "massMagnesium", "massOxygen", "molesMagnesium", "molesOxygen", "ratio", "formula", "oddGroup"],
            ["Neighbour", "7", "28.110", "28.370", "28.564", "0.260", "0.194", "0.01070", "0.012125", "0.882", "MgO", "7"],
            ["Copier", "8", "30.00", "30.24", "30.38", "0.25", "0.15", "0.010", "0.012125", "0.8", "Mg7O9", "8"],
            ["Blank", "9", "30.00", "30.25", "30.40", "", "", "", "", "", "", ""],
        ]);
        Assert.Contains(marked.Works[1].Answers[3].Ideas!.Candidates, c => c.Formula.Contains("Neighbour", StringComparison.Ordinal));
        string[] slips = Slips(marked);
        string[] names = ["Neighbour", "Copier", "Blank"];
        for (int i = 0; i < slips.Length; i++)
        {
            Assert.DoesNotContain(names.Where((_, n) => n != i), name => slips[i].Contains(name, StringComparison.Ordinal));
            Assert.DoesNotContain("fits the readings", slips[i], StringComparison.Ordinal);
            Assert.All(marked.Works[i].Answers, a =>
            {
                string others = slips[i].Replace($"\n{a.Given}\n", "\n", StringComparison.Ordinal);
                IEnumerable<string> expected = a.Expected is double value ? Enumerable.Range(2, 3).Select(figures => value.ToString($"G{figures}", CultureInfo.InvariantCulture)) : [a.ExpectedText ?? "no text"];
                Assert.All(expected.Where(e => marked.Works[i].Answers.All(b => !b.Given.StartsWith(e, StringComparison.Ordinal)) && e.Length > 3), e => Assert.DoesNotContain(e, others, StringComparison.Ordinal));
            });
        }
    }

    [Fact]
    public void The_teachers_comment_on_words_is_on_the_slip_and_a_reason_for_a_mark_is_not()
    {
        MarkedClass marked = MarkedClasses.Of(
            6, isWhole: true, ids: false, new Overruling(MarkedClasses.NameOf(0), "what-happened", 1, "Say which reading."), new Overruling(MarkedClasses.NameOf(0), "ratio", 0, "was told the value"));
        string slip = Slips(marked)[0];
        Assert.Contains("\nQuestion 1 (1 of 2): Say which reading.", slip, StringComparison.Ordinal);
        Assert.Contains("\nQuestion 2: not marked yet · Question 3 (0 of 1) · ", slip, StringComparison.Ordinal);
        Assert.Contains("\nWhether it was complete\nyes, it was complete\n0 of 1\n", slip, StringComparison.Ordinal);
        Assert.Contains($"\n{marked.Works[0].Total} of {marked.Works[0].Of} marks so far\n", slip, StringComparison.Ordinal);
        Assert.Contains("\nRatio Mg : O\n1.13\n0 of 1\n", slip, StringComparison.Ordinal);
        Assert.DoesNotContain("was told the value", slip, StringComparison.Ordinal);
    }

    [Fact]
    public void Nobody_marked_is_said_and_a_long_text_is_cut()
    {
        Assert.Contains("no student was marked", Written.Of(FeedbackSlips.Of(MarkedClasses.Nobody(), MarkedClasses.Setting())), StringComparison.Ordinal);
        MarkedClass essay = MarkedClasses.Mark([["student", "empty", "before", "after", "ratio"], ["Ada", "30.00", "30.24", "30.38", new string('x', 40) + " " + new string('y', 400)]]);
        string slip = Slips(essay)[0];
        Assert.Contains($"{new string('x', 40)} {new string('y', 19)}…", slip, StringComparison.Ordinal);
        Assert.DoesNotContain(new string('y', 20), slip, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData(false)]
    [InlineData(true)]
    public void The_document_is_valid_and_no_slip_is_split(bool isLarge)
    {
        Paper paper = FeedbackSlips.Of(MarkedClasses.Of(36, isWhole: true), MarkedClasses.Setting(new PaperLook(SheetSize.A4, isLarge, null)));
        using var file = WordprocessingDocument.Open(new MemoryStream(PaperWord.Of(paper)), isEditable: false);
        Assert.Empty(new OpenXmlValidator(DocumentFormat.OpenXml.FileFormatVersions.Office2019).Validate(file, TestContext.Current.CancellationToken).Select(e => $"{e.Path?.XPath}: {e.Description}"));
        string html = PaperHtml.Of(paper);
        Assert.Equal(36, html.Split("<section class=\"cut\">").Length - 1);
        Assert.Contains(".cut { break-inside: avoid;", html, StringComparison.Ordinal);
        Assert.Contains("&lt;b&gt;Bo&lt;/b&gt; &amp; Co", html, StringComparison.Ordinal);
        Assert.DoesNotContain("<b>Bo", html, StringComparison.Ordinal);
    }

    /// <summary>LibreOffice lays them out: each side holds whole slips, several of them.</summary>
    [Theory]
    [InlineData(false, false, 6)]
    [InlineData(true, false, 2)]
    [InlineData(false, true, 1)]
    [InlineData(true, true, 1)]
    public async Task Thirty_students_fill_few_sides_and_every_slip_is_whole(bool isWhole, bool isLarge, int leastOnASide)
    {
        Assert.SkipUnless(OfficePdf.IsThere, "LibreOffice or pdftotext is missing.");
        MarkedClass marked = MarkedClasses.Of(30, isWhole);
        byte[] document = PaperWord.Of(FeedbackSlips.Of(marked, MarkedClasses.Setting(new PaperLook(SheetSize.A4, isLarge, null))));
        string text = (await OfficePdf.Texts(new Dictionary<string, byte[]> { ["slips"] = document }, TestContext.Current.CancellationToken))["slips"];
        string[] sides = [.. text.Split('\f').Where(s => s.Trim().Length > 0)];
        Assert.InRange(sides.Length, 1, (int)Math.Ceiling(30.0 / leastOnASide));
        int slips = 0;
        foreach (string side in sides)
        {
            // A slip begins with its total and ends with what only its end has.
            int heads = Count(side, " marks") + Count(side, "not handed in");
            slips += heads;
            Assert.Equal(heads * (isWhole ? 1 : 5), isWhole ? Count(side, "Question 5") : Count(side, " of 1 ") + Count(side, " of 1\n") + Count(side, "not yet"));
        }

        Assert.Equal(30, slips);
    }

    private static int Count(string text, string part) => text.Split(part).Length - 1;

    private static string Capital(string text) => char.ToUpperInvariant(text[0]) + text[1..];

    /// <summary>Each slip's texts, a line each.</summary>
    private static string[] Slips(MarkedClass marked)
    {
        var cut = Assert.IsType<PaperBlock.CutApart>(FeedbackSlips.Of(marked, MarkedClasses.Setting()).Content.Single());
        return [.. cut.Parts.Select(p => string.Join('\n', Written.LinesOf(new Paper("slip", "", new RunningHeads("", "", "", null), p))).TrimStart('\n').Replace('\u00a0', ' ') + "\n")];
    }
}
