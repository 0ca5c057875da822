using Calx.Chemistry.Elements;
using Calx.Papers.Documents;
using Calx.Papers.Drawings;
using Calx.Papers.Texts;
using Calx.Practicals.Clock;
using Calx.Practicals.Definition;
using Calx.Practicals.Model;
using Calx.Practicals.Watching;

namespace Calx.Papers.Handouts;

/// <summary>The steps of the student sheet with one on each page, for those whom a full sheet loses: its number, the step in large letters,
/// what to take care of, a drawing where the practical has one, the reading that belongs to it, and a box to tick.</summary>
internal static class OneStepSheet
{
    /// <summary>More would not be read on one page; all of them stand on the first.</summary>
    private const int MostCautions = 3;

    private const double DrawingWidth = 140;

    /// <summary>Large letters leave it less room where there is a reading to write too.</summary>
    private const double SmallDrawing = 112;

    private const double RowInMillimetres = 12;

    /// <summary>A page a step, each beginning with a break.</summary>
    public static IEnumerable<PaperBlock> Of(PaperSetting setting)
    {
        IReadOnlyList<(Phrase Say, IReadOnlyList<string> Steps)> told = SheetSteps.Told(setting);
        IReadOnlyDictionary<string, IReadOnlyList<string>> cautions = CautionsOfSteps.Of(setting.Plan.Settings, AtomicWeights.Iupac2024);
        var drawn = new HashSet<string>(StringComparer.Ordinal);
        StudentSheetTexts texts = new(setting.Language);
        string all = Sentences.Count(told.Count);
        return told.SelectMany((step, index) => Page(setting, step, texts.StepOfAll(Sentences.Count(index + 1), all), cautions, drawn));
    }

    private static IEnumerable<PaperBlock> Page(
        PaperSetting setting, (Phrase Say, IReadOnlyList<string> Steps) step, string number, IReadOnlyDictionary<string, IReadOnlyList<string>> cautions, HashSet<string> drawn)
    {
        StudentSheetTexts texts = new(setting.Language);
        yield return new PaperBlock.PageBreak();
        yield return new PaperBlock.Heading(number);
        yield return new PaperBlock.Paragraph(step.Say, ParagraphLook.Step);
        string[] care = [.. step.Steps.Where(cautions.ContainsKey).SelectMany(s => cautions[s]).Distinct().Take(MostCautions)];
        if (care.Length > 0)
        {
            yield return new PaperBlock.Panel(PanelKind.Caution, texts.CautionsHeading, [new PaperBlock.Items(ListKind.Bullets, [.. care.Select(Phrase.Of)])]);
        }

        Weighing[] readings = Readings(setting.Plan.Settings, step.Steps);
        if (setting.Practical.Drawings.FirstOrDefault(d => d.Steps.Any(step.Steps.Contains)) is Drawing drawing)
        {
            yield return Figure(drawing, drawn, setting.Look.IsLarge && readings.Length > 0 ? SmallDrawing : DrawingWidth, setting.Language);
        }

        if (readings.Length > 0)
        {
            yield return Table(setting.Plan.Settings, readings, texts);
        }

        yield return new PaperBlock.Items(ListKind.Ticks, [Phrase.Bold(texts.StepDone)]);
    }

    /// <summary>A drawing that comes again needs names of its own, or its parts would be taken for those of the first.</summary>
    private static PaperBlock.Figure Figure(Drawing drawing, HashSet<string> drawn, double width, PaperLanguage language)
    {
        string name = $"step-{drawing.Id}";
        for (int again = 2; !drawn.Add(name); again++)
        {
            name = FormattableString.Invariant($"step-{drawing.Id}-{again}");
        }

        return new PaperBlock.Figure(ApparatusDrawing.Picture(drawing, name, DrawingSize.Narrow, language), drawing.Label, width);
    }

    /// <summary>A first weighing belongs to the step that takes it, those after a further heating to the step that heats again.</summary>
    private static Weighing[] Readings(PlanSettings plan, IReadOnlyList<string> steps) =>
    [
        .. SheetReadings.Weighings(plan).Where(weighing => plan.Practical.Steps.Any(s => steps.Contains(s.Id) && plan.IsInLesson(s)
            && (weighing.Occurrence == 1 ? s.Reading == weighing.Reading : s.Place.Round == StepRound.Again))),
    ];

    private static PaperBlock.Table Table(PlanSettings plan, Weighing[] readings, StudentSheetTexts texts) => new(new PaperTable(
        plan.Trials == 1
            ? [new(texts.ToWriteColumn, 3), new(texts.AllDigitsColumn, 1.4, IsNumber: true)]
            : [new(texts.ToWriteColumn, 3), .. Enumerable.Range(1, plan.Trials).Select(t => new PaperColumn(texts.TrialColumn(Sentences.Count(t)), 1.4, IsNumber: true))],
        [
            .. readings.Select(w => (PaperCell[])
                [new(SheetReadings.Heading(plan.Practical, w), RowInMillimetres, IsHeading: true), .. Enumerable.Repeat(new PaperCell(""), plan.Trials)]),
        ],
        TableRuling.Framed));
}
