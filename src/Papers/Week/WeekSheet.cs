using System.Globalization;
using Calx.Papers.Documents;
using Calx.Papers.Handouts;
using Calx.Papers.Texts;
using Calx.Practicals.Clock;

namespace Calx.Papers.Week;

/// <summary>A technician's week on paper: a day at a time, counted out and back.</summary>
public static class WeekSheet
{
    /// <summary>Makes it.</summary>
    /// <param name="week">The week; it is told in the language of the sheet.</param>
    /// <param name="printed">The date of printing, as printed, or null.</param>
    /// <param name="look">How it is printed; null for A4 with letters of usual size.</param>
    /// <param name="isInvented">Whether classes and data are made up.</param>
    public static Paper Of(TechnicianWeek week, string? printed = null, PaperLook? look = null, bool isInvented = false)
    {
        ArgumentNullException.ThrowIfNull(week);
        PaperLook own = look ?? PaperLook.Usual;
        WeekTexts texts = new(own.Language);
        week = week.In(own.Language);
        string days = texts.FromTo(TechnicianWeek.DayOf(week.From, own.Language), TechnicianWeek.DayOf(week.To, own.Language), Sentences.Count(week.To.Year));
        string[] foot = [.. new[] { printed is null ? null : texts.Printed(printed), isInvented ? texts.Invented : null }.OfType<string>()];
        PaperBlock[] content =
        [
            new PaperBlock.Paragraph(Phrase.Bold(days), ParagraphLook.Lead),
            .. week.Warnings.Count == 0 ? [] : (PaperBlock[])[new PaperBlock.Panel(PanelKind.Caution, texts.SettleHeading, [new PaperBlock.Items(ListKind.Bullets, [.. week.Warnings.Select(Phrase.Of)])])],
            .. week.Days.Count == 0 ? [new PaperBlock.Paragraph(texts.NoLesson)] : (PaperBlock[])[],
            .. week.Days.SelectMany(d => Day(d, own.Language)),
            .. week.Chemicals.Count == 0 ? [] : (PaperBlock[])[new PaperBlock.Heading(texts.ChemicalsHeading), new PaperBlock.Table(Chemicals(week, texts))],
            new PaperBlock.Paragraph(texts.RulesDecide, ParagraphLook.Small),
        ];
        return new Paper("technician-week", texts.Title, new RunningHeads(texts.Title, days, string.Join(" · ", foot), null), content, own.Denser());
    }

    private static IEnumerable<PaperBlock> Day(WeekDay day, PaperLanguage language)
    {
        WeekTexts texts = new(language);
        yield return new PaperBlock.Heading(TechnicianWeek.DayOf(day.Date, language));
        yield return new PaperBlock.Table(Lessons(day, texts));
        if (day.Items.Count > 0)
        {
            yield return new PaperBlock.Heading(texts.OutAndBackHeading, 2);
            yield return new PaperBlock.Table(new PaperTable(
                [new(texts.ItemColumn, 4), new(texts.AtOnceColumn, 1.3, IsNumber: true), new(texts.ForColumn, 3.2), new(texts.OutColumn, 0.8), new(texts.BackColumn, 0.8)],
                [.. day.Items.Select(i => (PaperCell[])[new(i.Label, IsHeading: true), i.Written, i.Lessons.Count == day.Lessons.Count(l => !l.IsCover) ? texts.AllLessons : string.Join("; ", i.Lessons), "", ""])],
                TableRuling.Framed));
        }

        if (day.Preparation.Count > 0)
        {
            yield return new PaperBlock.Heading(texts.PrepareHeading(Sentences.Count(day.PreparationInMinutes)), 2);
            yield return new PaperBlock.Items(ListKind.Ticks, [.. day.Preparation.Select(p => Phrase.Of(texts.Prepare(p.Say, Sentences.Count(p.Minutes))))]);
        }

        if (day.Hot.Count > 0)
        {
            yield return new PaperBlock.Heading(texts.HotHeading, 2);
            yield return new PaperBlock.Items(ListKind.Bullets, [.. day.Hot.Select(Phrase.Of)]);
        }
    }

    private static PaperTable Lessons(WeekDay day, WeekTexts texts) => new(
        [
            new(texts.PeriodColumn, 1), new(texts.RoomColumn, 1.2), new(texts.ClassColumn, 1), new(texts.TeacherColumn, 1.4),
            new(texts.PracticalColumn, 4), new(texts.GroupsColumn, 0.9, IsNumber: true), new(texts.NoticeColumn, 1, IsNumber: true),
        ],
        [
            .. day.Lessons.Select(l => (PaperCell[])
            [
                new(l.Occasion.Period ?? "", IsHeading: true), l.Occasion.Room ?? "", l.Occasion.ClassName ?? "", l.Occasion.Teacher ?? "",
                What(l, texts), l.IsCover ? "" : l.Plan.Groups.ToString(CultureInfo.InvariantCulture),
                !l.IsCover && l.Plan.Practical.Technician.NoticeInHours is > 0 and var hours ? string.Create(CultureInfo.InvariantCulture, $"{hours:0.#}\u00a0h") : "",
            ]),
        ]);

    private static string What(WeekLesson lesson, WeekTexts texts)
    {
        PlanSettings plan = lesson.Plan;
        string title = plan.Practical.Title;
        string sample = string.Create(CultureInfo.InvariantCulture, $"{plan.SampleInGrams:0.###}\u00a0g");
        return lesson.IsCover ? texts.Cover(title) : !plan.Practical.WeighsOutSample ? title : plan.Trials > 1 ? texts.SampleOfTrial(title, sample, Sentences.Count(plan.Trials)) : texts.SampleOfGroup(title, sample);
    }

    private static PaperTable Chemicals(TechnicianWeek week, WeekTexts texts) => new(
        [new(texts.WhatColumn, 3), new(texts.AmountColumn, 1.2, IsNumber: true), new(texts.ForColumn, 5)],
        [.. week.Chemicals.Select(c => (PaperCell[])[new(c.Label, IsHeading: true), c.Written, string.Join("; ", c.Lessons)])]);
}
