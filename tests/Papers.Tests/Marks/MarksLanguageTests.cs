using System.IO.Compression;
using System.Net;
using System.Text;
using Calx.Papers.Documents;
using Calx.Papers.Documents.Html;
using Calx.Papers.Marks;
using Calx.Papers.Tests.Texts;
using Calx.Practicals.Marking;

namespace Calx.Papers.Tests.Marks;

/// <summary>Table and slips in a second language have no text of the first left; the sentences of practical and engine stay.</summary>
public sealed class MarksLanguageTests
{
    /// <summary>Said by the engine in the same words.</summary>
    private static readonly string[] EngineToo = ["could not be read", "could not be marked", "something else"];

    [Fact]
    public void Workbook_and_slips_are_in_the_language_that_was_asked()
    {
        MarksSetting setting = MarkedClasses.Setting(PaperLook.Usual with { Language = PseudoLanguage.Of() });
        MarkedClass marked = MarkedClasses.Of(12, isWhole: true, ids: false, new Overruling(MarkedClasses.NameOf(1), "ratio", 0, "r"), new Overruling(MarkedClasses.NameOf(0), "conserved", 1, "c"));
        string all = Unpacked(MarksWorkbook.Of(marked, setting)) + Unpacked(MarksWorkbook.Of(MarkedClasses.Nobody(), setting))
            + WebUtility.HtmlDecode(PaperHtml.Of(FeedbackSlips.Of(marked, setting), FeedbackSlips.Of(MarkedClasses.Nobody(), setting)));
        string[] texts =
        [
            .. TextTopic.All.Where(t => t.Name is "MarksTexts" or "FeedbackSlipTexts").SelectMany(t => t.Texts).SelectMany(t => t.Value.Split('{', '}'))
                .Select(p => p.Trim(' ', ',', ';', ':', '.', '(', ')')).Where(p => p.Length >= 8 && p.Contains(' ', StringComparison.Ordinal)).Except(EngineToo),
        ];
        Assert.NotEmpty(texts);
        Assert.All(texts, text => Assert.DoesNotContain(text, all, StringComparison.Ordinal));
        Assert.Contains(PseudoLanguage.Spoken("nothing written"), all, StringComparison.Ordinal);
    }

    private static string Unpacked(byte[] file)
    {
        using var archive = new ZipArchive(new MemoryStream(file));
        var all = new StringBuilder();
        foreach (ZipArchiveEntry entry in archive.Entries)
        {
            using var reader = new StreamReader(entry.Open());
            all.Append(reader.ReadToEnd());
        }

        return WebUtility.HtmlDecode(all.ToString());
    }
}
