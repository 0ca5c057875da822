using Calx.Papers.Documents;
using Calx.Papers.Handouts;
using Calx.Papers.Texts;
using Calx.Practicals.Marking;

namespace Calx.Papers.Marks;

/// <summary>What a slip tells of values and judgements: what was asked, what was written, the marks.</summary>
internal sealed class SlipAnswers(MarksSetting setting)
{
    /// <summary>A longer text was no value; the teacher has all of it.</summary>
    private const int LongestGiven = 60;

    /// <summary>What is longer takes a row across the slip.</summary>
    private const int LongestInHalf = 14;

    /// <summary>Width between the two halves beside the other columns.</summary>
    private const double Gap = 0.3;

    private readonly FeedbackSlipTexts texts = new(setting.Language);

    /// <summary>Short answers in two halves side by side, so that several slips go on a page, below each other where the letters are large; long
    /// ones in rows across.</summary>
    public IEnumerable<PaperBlock> Of(MarkedWork work)
    {
        ILookup<bool, AnswerMark> isShort = work.Answers.ToLookup(a => Shown(a).Length <= LongestInHalf);
        if (isShort[true].Any())
        {
            yield return InHalves([.. isShort[true]]);
        }

        if (isShort[false].Any())
        {
            bool needsHeadings = !isShort[true].Any();
            yield return new PaperBlock.Table(new PaperTable(
                [new(needsHeadings ? texts.AnswerColumn : "", 3.2), new(needsHeadings ? texts.GivenColumn : "", 5), new(needsHeadings ? texts.MarksColumn : "", 1.2, IsNumber: true)],
                [.. isShort[false].Select(Row)]));
        }
    }

    private PaperBlock.Table InHalves(AnswerMark[] marks)
    {
        int halves = setting.Look.IsLarge || marks.Length == 1 ? 1 : 2;
        int rows = (marks.Length + halves - 1) / halves;
        PaperColumn[] columns = [new(texts.AnswerColumn, 5.2), new(texts.GivenColumn, 2.3, IsNumber: true), new(texts.MarksColumn, 1.6, IsNumber: true)];
        IReadOnlyList<PaperCell> Cells(int at) => at >= marks.Length ? ["", "", ""] : Row(marks[at]);
        IReadOnlyList<PaperCell> Across(int row) => halves == 1 ? Cells(row) : [.. Cells(row), "", .. Cells(rows + row)];
        return new PaperBlock.Table(new PaperTable(halves == 1 ? columns : [.. columns, new("", Gap), .. columns], [.. Enumerable.Range(0, rows).Select(Across)]));
    }

    private PaperCell[] Row(AnswerMark mark) =>
    [
        new PaperCell(Reports.Text.Capital(MarksSetting.Asked(mark.Answer)), IsHeading: true),
        new PaperCell(new Phrase(new PhrasePiece(Shown(mark), setting.Given(mark).Length == 0 ? PhraseLook.Italic : PhraseLook.Plain))),
        mark.IsUnread ? texts.ToBeRead : texts.Marks(Sentences.Count(mark.Marks), Sentences.Count(mark.Answer.Marks)),
    ];

    private string Shown(AnswerMark mark)
    {
        string given = setting.Given(mark);
        return given.Length == 0 ? texts.Nothing
            : given.Length > LongestGiven && setting.Choice(mark, mark.Given) is null ? $"{given[..LongestGiven].TrimEnd()}…" : given;
    }
}
