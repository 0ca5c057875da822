using Calx.Papers.Documents;
using Calx.Papers.Reports;

namespace Calx.Papers.Handouts.Cover;

/// <summary>The data and the questions of a cover lesson, to be copied for every student. One side; answers are written on paper of one's own.</summary>
public static class CoverQuestions
{
    /// <summary>Makes it.</summary>
    /// <param name="setting">The lesson.</param>
    public static Paper Of(PaperSetting setting)
    {
        ArgumentNullException.ThrowIfNull(setting);
        var lesson = new CoverLesson(setting);
        PaperBlock[] content =
        [
            new PaperBlock.Paragraph(setting.Practical.Question, ParagraphLook.Lead),
            new PaperBlock.Paragraph(Phrase.Bold($"{lesson.Texts.NothingDone} ").Then(lesson.Origin)),
            lesson.Readings(),
            .. lesson.Curve(),
            new PaperBlock.Heading(lesson.SheetTexts.WorkingsHeading),
            new PaperBlock.Paragraph(lesson.IsShown ? lesson.Texts.WorkWithPartner : lesson.Texts.TakeOneGroup),
            .. lesson.Workings(),
            new PaperBlock.Heading(lesson.SheetTexts.QuestionsHeading),
            .. setting.Practical.Sheet.Words.Count == 0 ? [] : (PaperBlock[])[new PaperBlock.Panel(PanelKind.Help, lesson.SheetTexts.WordsHeading, [new PaperBlock.Paragraph(string.Join(" · ", setting.Practical.Sheet.Words))])],
            new PaperBlock.Paragraph(lesson.IsShown ? lesson.Texts.CompareShown : lesson.Texts.Compare),
            .. lesson.Asking(),
            new PaperBlock.Paragraph(lesson.IsShown ? lesson.Texts.YourReadingsShown : lesson.Texts.YourReadings, ParagraphLook.Small),
        ];
        return lesson.Paper("cover-questions", setting.Practical.Title, content, setting.Look);
    }
}
