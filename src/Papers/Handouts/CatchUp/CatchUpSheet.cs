using Calx.Chemistry.Elements;
using Calx.Papers.Documents;
using Calx.Papers.Drawings;
using Calx.Papers.Texts;
using Calx.Practicals.CatchUp;
using Calx.Practicals.Definition;

namespace Calx.Papers.Handouts.CatchUp;

/// <summary>
/// What somebody who was away gets: the question, what the class did, readings of their own that open one after another so that 'reheat or
/// stop?' is decided by the student, then the same workings and questions as on the student sheet. Nothing on it is done with one's hands.
/// </summary>
public static class CatchUpSheet
{
    private const double SmallDrawing = 64;
    private const double LargeDrawing = 100;

    /// <summary>Makes one for each pack, in their order.</summary>
    /// <param name="setting">The lesson.</param>
    /// <param name="packs">The students' data.</param>
    /// <returns>The sheets; their files are called as <see cref="CatchUpNames"/> says.</returns>
    public static IReadOnlyList<Paper> Of(CatchUpSetting setting, IReadOnlyList<CatchUpPack> packs)
    {
        ArgumentNullException.ThrowIfNull(setting);
        ArgumentNullException.ThrowIfNull(packs);
        CatchUpTexts texts = new(setting.Language);
        // What is the same for all is made once: drawings take longer than all the rest.
        PaperBlock[] head = [new PaperBlock.Paragraph(setting.Practical.Question, ParagraphLook.Lead), new PaperBlock.Heading(setting.IsDemonstration ? texts.ShownHeading : texts.DoneHeading), .. Done(setting, texts)];
        PaperBlock[] work =
        [
            new PaperBlock.Heading(texts.WorkHeading),
            .. new SheetWorkings(setting.Practical, AtomicWeights.Iupac2024, setting.Language).Of(setting.Level, sideBySide: !setting.Look.IsLarge),
            .. SheetQuestions.Of(setting.Practical, setting.Practical.Sheet.Questions, setting.Level, new StudentSheetTexts(setting.Language)),
        ];
        // The strips are folded on a side of their own; with large letters they take several, and are not held together.
        PaperBlock[] side = setting.Look.IsLarge ? [] : [new PaperBlock.PageBreak()];
        IReadOnlyList<string> names = CatchUpNames.Of([.. packs.Select(p => p.Student)]);
        return
        [
            .. packs.Select((pack, i) => setting.Paper(
                names[i],
                texts.Kind,
                Phrase.Of(texts.Title(setting.Practical.Title)),
                [Label(texts), Names(setting, pack, texts), .. head, .. CatchUpReadings.Table(setting, pack, texts), .. side, .. CatchUpReadings.Of(setting, pack, texts), .. side, .. work])),
        ];
    }

    private static PaperBlock.Panel Label(CatchUpTexts texts) => new(
        PanelKind.Caution,
        texts.Simulated,
        [
            new PaperBlock.Paragraph(texts.Label),
            new PaperBlock.Paragraph(Phrase.Bold(texts.NothingIsDone)),
        ]);

    private static PaperBlock.Table Names(CatchUpSetting setting, CatchUpPack pack, CatchUpTexts texts) => new(new PaperTable(
        [new PaperColumn("", 3), new PaperColumn("", 1.4), new PaperColumn("", 1.6)],
        [[new PaperCell(Phrase.Of($"{texts.Name}  ").Then(pack.Student.Name, PhraseLook.Bold), 7), $"{texts.Class}  {setting.Occasion.ClassName}", texts.HandIn]],
        TableRuling.Framed));

    /// <summary>The account, with the first drawing beside it, or above where the letters are large.</summary>
    private static PaperBlock[] Done(CatchUpSetting setting, CatchUpTexts texts)
    {
        bool isShown = setting.IsDemonstration;
        PaperBlock[] account = [new PaperBlock.Paragraph(isShown ? texts.DoneByTeacher : texts.Done), new PaperBlock.Items(ListKind.Numbers, ClassAccount.Of(setting.Plan, texts))];
        bool isLarge = setting.Look.IsLarge;
        Drawing? drawing = setting.Practical.Drawings.FirstOrDefault(
            d => d.Steps.Count == 0 || setting.Practical.Steps.Any(s => d.Steps.Contains(s.Id) && setting.Plan.IsInLesson(s)));
        if (drawing is null)
        {
            return account;
        }

        string shows = $"{char.ToLowerInvariant(drawing.Label[0])}{drawing.Label[1..]}";
        var figure = new PaperBlock.Figure(
            ApparatusDrawing.Picture(drawing, $"catch-up-{drawing.Id}", isLarge ? DrawingSize.Wide : DrawingSize.Narrow, setting.Language),
            Phrase.Of(isShown ? texts.TeacherBenchCaption(shows) : texts.BenchCaption(shows)),
            isLarge ? LargeDrawing : SmallDrawing);
        return isLarge ? [.. account, figure] : [new PaperBlock.Beside(account, [figure], leftShare: 0.62)];
    }
}
