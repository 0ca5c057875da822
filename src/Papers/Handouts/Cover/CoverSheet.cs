using Calx.Papers.Documents;
using Calx.Papers.Reports;
using Calx.Papers.Texts;
using Calx.Practicals.Definition;

namespace Calx.Papers.Handouts.Cover;

/// <summary>
/// For a lesson that is taken by somebody who may not be a chemist: no practical work, an invented class's readings, what students do and when,
/// what is asked, and what is handed in. One side.
/// </summary>
public static class CoverSheet
{
    /// <summary>Makes it.</summary>
    /// <param name="setting">The lesson.</param>
    public static Paper Of(PaperSetting setting)
    {
        ArgumentNullException.ThrowIfNull(setting);
        var lesson = new CoverLesson(setting);
        CoverTexts texts = lesson.Texts;
        PaperBlock[] content =
        [
            new PaperBlock.Panel(PanelKind.Caution, texts.NoPracticalHeading, [new PaperBlock.Paragraph(texts.NoPractical)]),
            Occasion(setting, texts),
            new PaperBlock.Heading(texts.AboutHeading),
            new PaperBlock.Paragraph(Phrase.Bold(setting.Practical.Question).Then($" {About(setting.Practical, lesson)}")),
            new PaperBlock.Heading(texts.StepsHeading),
            new PaperBlock.Table(Steps(lesson)),
            new PaperBlock.Heading(texts.DataHeading),
            new PaperBlock.Paragraph(Phrase.Bold(lesson.Origin), ParagraphLook.Small),
            lesson.Readings(),
            new PaperBlock.Paragraph(Phrase.Bold($"{texts.WorkedOutLead} ").Then(texts.WorkedOut(Sentences.And([.. lesson.Asked.Select(a => a.Label)], setting.Language)))),
            .. lesson.Questions.Count == 0 ? [] : (PaperBlock[])[new PaperBlock.Heading(texts.QuestionsHeading), .. lesson.Asking()],
            new PaperBlock.Paragraph(Phrase.Bold($"{texts.HandedInLead} ").Then(HandedIn(lesson))),
        ];
        return lesson.Paper("cover-sheet", texts.SheetTitle(setting.Practical.Title), content, setting.Look.Denser());
    }

    private static string About(Practical practical, CoverLesson lesson)
    {
        string change = practical.Quantities.First(q => q.Id == practical.Findings.Change).Label;
        if (lesson.IsShown)
        {
            return lesson.Texts.AboutShown(change);
        }

        string about = lesson.Texts.About(change, Sentences.Count(lesson.Class.Groups.Count));
        return lesson.Class.Weighings.Any(w => w.Occurrence > 1) ? $"{about} {lesson.Texts.Dash}" : about;
    }

    private static string HandedIn(CoverLesson lesson) => (lesson.IsShown, lesson.Questions.Count > 0) switch
    {
        (true, true) => lesson.Texts.HandedInWithQuestionsShown,
        (true, false) => lesson.Texts.HandedInShown,
        (false, true) => lesson.Texts.HandedInWithQuestions,
        _ => lesson.Texts.HandedIn,
    };

    private static PaperBlock.Table Occasion(PaperSetting setting, CoverTexts texts)
    {
        PaperOccasion said = setting.Occasion;
        return new PaperBlock.Table(new PaperTable(
            [new("", 1), new("", 1.6), new("", 1), new("", 1.6), new("", 1), new("", 1.6)],
            [[Head(texts.Class), said.ClassName ?? "", Head(texts.DateAndPeriod), string.Join(", ", new[] { said.Date ?? "", PaperOccasion.InWords(said.Period, setting.Language) }.Where(t => t.Length > 0)), Head(texts.Room), said.Room ?? ""]],
            TableRuling.Framed));

        static PaperCell Head(string text) => new(Phrase.Bold(text), 6, IsHeading: true);
    }

    private static PaperTable Steps(CoverLesson lesson)
    {
        CoverTexts texts = lesson.Texts;
        bool asks = lesson.Questions.Count > 0;
        (double Share, string Say)[] steps =
        [
            (5, texts.StepRegister),
            (10, texts.StepRead),
            (30, lesson.IsShown ? texts.StepInPairsShown : texts.StepInPairs),
            (15, lesson.IsShown ? texts.StepCompareShown : texts.StepCompare),
            .. asks ? [(30, texts.StepQuestions)] : Array.Empty<(double, string)>(),
            (10, texts.StepCollect),
        ];
        int[] minutes = CoverMinutes.Of([.. steps.Select(s => s.Share)], lesson.Plan.Minutes);
        int from = 0;
        var rows = new List<PaperCell[]>();
        foreach ((string say, int taken) in steps.Select(s => s.Say).Zip(minutes).Where(s => s.Second > 0))
        {
            rows.Add([new PaperCell(texts.FromTo(Sentences.Count(from), Sentences.Count(from + taken)), IsHeading: true), Sentences.Count(taken), say]);
            from += taken;
        }

        return new PaperTable([new(texts.MinuteColumn, 1), new(texts.TakesColumn, 1.3, IsNumber: true), new(texts.WhatColumn, 9)], rows);
    }
}
