using Calx.Chemistry.Elements;
using Calx.Papers.Documents;
using Calx.Papers.Drawings;
using Calx.Papers.Texts;
using Calx.Practicals.Definition;

namespace Calx.Papers.Handouts;

/// <summary>The sheet that a student works from: question, cautions, steps with the plan's amounts, table, workings, questions. Two sides
/// at the usual size, and one of squared paper where mass is read against time; with one step a page, as many as it has steps and two or three more.</summary>
public static class StudentSheet
{
    private const double SmallDrawing = 68;
    private const double LargeDrawing = 130;

    /// <summary>More things to look for than this take more of the line, or they would stand lower than the table.</summary>
    private const int FewToSee = 5;

    /// <summary>Makes it.</summary>
    /// <param name="setting">The lesson.</param>
    /// <param name="level">How much it helps.</param>
    public static Paper Of(PaperSetting setting, SupportLevel level)
    {
        ArgumentNullException.ThrowIfNull(setting);
        StudentSheetTexts texts = new(setting.Language);
        Practical practical = setting.Practical;
        Phrase[] seen = [.. practical.Observations.Where(o => !o.Stop && !o.TeacherOnly).Select(o => Phrase.Of(o.Label))];
        PaperBlock[] content =
        [
            new PaperBlock.Paragraph(practical.Question, ParagraphLook.Lead),
            Names(texts),
            SheetCautions.Of(setting),
            .. WhatToDo(setting, texts),
            new PaperBlock.Heading(texts.ReadingsHeading),
            .. Readings(setting, texts, seen),
            // A table of times that is parted by the end of a page is written into wrongly.
            .. practical.Series is null ? (PaperBlock[])[] : [new PaperBlock.PageBreak()],
            .. SheetSeries.Table(practical, setting.Language),
            new PaperBlock.Heading(texts.WorkingsHeading),
            .. new SheetWorkings(practical, AtomicWeights.Iupac2024, setting.Language).Of(level, sideBySide: !setting.Look.IsLarge && !setting.StudentLook.IsOneStep),
            .. SheetQuestions.Of(practical, setting.Plan.Settings.Questions, level, texts),
            .. SheetSeries.Squared(practical, setting.Language, numbered: level != SupportLevel.Open),
        ];
        return setting.Paper($"student-sheet-{level.ToString().ToLowerInvariant()}{(setting.StudentLook.IsOneStep ? "-one-step" : "")}", texts.Kind, practical.Title, content, Look(setting, level));
    }

    /// <summary>A sheet of US Letter is 18 mm shorter than A4: the level with the most on it takes somewhat smaller letters there.</summary>
    private static PaperLook Look(PaperSetting setting, SupportLevel level) =>
        level == SupportLevel.Guided && setting.StudentLook is { Size: SheetSize.Letter, IsOneStep: false } ? setting.StudentLook.Denser() : setting.StudentLook;

    private static IEnumerable<PaperBlock> WhatToDo(PaperSetting setting, StudentSheetTexts texts) => setting.StudentLook.IsOneStep
        ? [new PaperBlock.Paragraph(texts.StepAPage), .. OneStepSheet.Of(setting), new PaperBlock.PageBreak()]
        : [new PaperBlock.Heading(texts.StepsHeading), .. Steps(setting)];

    /// <summary>The steps with the first drawing of what they use beside them, or above where the letters are large.</summary>
    private static IReadOnlyList<PaperBlock> Steps(PaperSetting setting)
    {
        var steps = new PaperBlock.Items(ListKind.Numbers, SheetSteps.Of(setting));
        Drawing? drawing = setting.Practical.Drawings.FirstOrDefault(
            d => d.Steps.Count == 0 || setting.Practical.Steps.Any(s => d.Steps.Contains(s.Id) && setting.Plan.Settings.IsInLesson(s)));
        if (drawing is null)
        {
            return [steps];
        }

        var figure = new PaperBlock.Figure(ApparatusDrawing.Picture(drawing, $"sheet-{drawing.Id}", setting.Look.IsLarge ? DrawingSize.Wide : DrawingSize.Narrow, setting.Language), drawing.Label, setting.Look.IsLarge ? LargeDrawing : SmallDrawing);
        return setting.Look.IsLarge ? [figure, steps] : [new PaperBlock.Beside([steps], [figure], leftShare: 0.61)];
    }

    /// <summary>What was seen stands beside what was read, where the letters leave room for both.</summary>
    private static IReadOnlyList<PaperBlock> Readings(PaperSetting setting, StudentSheetTexts texts, Phrase[] seen)
    {
        IReadOnlyList<PaperBlock> readings = SheetReadings.Of(setting);
        PaperBlock[] ticks = seen.Length == 0 ? [] : [new PaperBlock.Heading(texts.ObservationsHeading, 2), new PaperBlock.Items(ListKind.Ticks, seen)];
        bool fits = ticks.Length > 0 && !setting.Look.IsLarge && !setting.StudentLook.IsOneStep && setting.Plan.Settings.Trials <= 2;
        return fits ? [new PaperBlock.Beside([readings[0]], ticks, seen.Length > FewToSee ? 0.52 : 0.66), .. readings.Skip(1)] : [.. readings, .. ticks];
    }

    private static PaperBlock.Table Names(StudentSheetTexts texts) => new(new PaperTable(
        [new PaperColumn("", 3), new PaperColumn("", 2), new PaperColumn("", 1), new PaperColumn("", 1)],
        [[new PaperCell(texts.Name, 7), texts.Group, texts.Balance, texts.Vessel]],
        TableRuling.Framed));
}
