using Calx.Papers.Documents;
using Calx.Papers.Handouts;
using Calx.Papers.Texts;
using Calx.Practicals.Marking;
using Calx.Practicals.Marking.Prose;

namespace Calx.Papers.Marks;

/// <summary>
/// Slips to print and cut apart, one a student: what was asked, what was written, the marks, two or three sentences, the teacher's comments.
/// No slip tells an expected value, or anything of another student.
/// </summary>
public static class FeedbackSlips
{
    /// <summary>Makes them, in the order of the students.</summary>
    /// <param name="marked">The class, marked.</param>
    /// <param name="setting">Practical, class and date, and how they are printed.</param>
    public static Paper Of(MarkedClass marked, MarksSetting setting)
    {
        ArgumentNullException.ThrowIfNull(marked);
        ArgumentNullException.ThrowIfNull(setting);
        FeedbackSlipTexts texts = new(setting.Language);
        PaperBlock content = marked.Works.Count == 0
            ? new PaperBlock.Paragraph(texts.Nobody)
            : new PaperBlock.CutApart([.. marked.Works.Select(w => Slip(w, setting, texts))]);
        return new Paper("feedback-slips", texts.Title(setting.Practical.Title), setting.Heads(texts.Kind), [content], setting.Look.Denser()) { ShowsTitle = marked.Works.Count == 0 };
    }

    private static PaperBlock[] Slip(MarkedWork work, MarksSetting setting, FeedbackSlipTexts texts) =>
    [
        .. Head(work, setting, texts),
        .. new SlipAnswers(setting).Of(work),
        new PaperBlock.Paragraph(work.Feedback),
        .. Words(work, setting, texts),
    ];

    /// <summary>Name and total, and what it is for between them; below them where the letters are large.</summary>
    private static PaperBlock[] Head(MarkedWork work, MarksSetting setting, FeedbackSlipTexts texts)
    {
        (string total, string of) = (Sentences.Count(work.Total), Sentences.Count(work.Of));
        string occasion = string.Join(" · ", new[] { setting.Practical.Title, setting.ClassAndDate }.Where(t => t.Length > 0));
        PaperCell name = new(Phrase.Bold(work.Work.Student)), earned = new(Phrase.Bold(!work.IsHandedIn ? texts.NothingHandedIn : work.IsFinal ? texts.Total(total, of) : texts.TotalSoFar(total, of)));
        PaperColumn right = new("", 2.2, IsNumber: true);
        return setting.Look.IsLarge
            ? [new PaperBlock.Table(new PaperTable([new PaperColumn("", 3), right], [[name, earned]])), new PaperBlock.Paragraph(occasion)]
            : [new PaperBlock.Table(new PaperTable([new PaperColumn("", 2.8), new PaperColumn("", 5), right], [[name, occasion, earned]]))];
    }

    /// <summary>Answers in words: those with a comment on lines of their own, all others in one.</summary>
    private static IEnumerable<PaperBlock> Words(MarkedWork work, MarksSetting setting, FeedbackSlipTexts texts)
    {
        string[] bare = [.. work.Prose.Where(p => p.Comment is null).Select(p => Lead(p, setting, texts))];
        return
        [
            .. work.Prose.Where(p => p.Comment is not null).Select(p => new PaperBlock.Paragraph(Phrase.Bold(new SharedTexts(setting.Language).Lead(Lead(p, setting, texts))).Then($" {p.Comment}"))),
            .. bare.Length == 0 ? [] : (PaperBlock[])[new PaperBlock.Paragraph(string.Join(" · ", bare))],
        ];
    }

    private static string Lead(ProseMark prose, MarksSetting setting, FeedbackSlipTexts texts)
    {
        string number = setting.NumberOf(prose);
        return prose.Marks is int marks ? texts.QuestionMarked(number, Sentences.Count(marks), Sentences.Count(prose.Of)) : texts.QuestionWaiting(number);
    }
}
