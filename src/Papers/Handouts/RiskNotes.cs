using Calx.Papers.Reports;
using System.Globalization;
using Calx.Papers.Charts;
using Calx.Papers.Documents;
using Calx.Papers.Drawings;
using Calx.Papers.Texts;
using Calx.Practicals.Clock;
using Calx.Practicals.Definition;

namespace Calx.Papers.Handouts;

/// <summary>Notes for the teacher's own risk assessment: hazards of what is handled and made, of things and steps, with controls,
/// supervision, emergencies, disposal, and the blanks that only somebody who knows the class and the room can fill. Nothing in it is approved.</summary>
public static class RiskNotes
{
    private const string Unknown = "–";
    private const double SmallDrawing = 62;
    private const double LargeDrawing = 130;

    /// <summary>Makes them.</summary>
    /// <param name="setting">The lesson.</param>
    public static Paper Of(PaperSetting setting)
    {
        ArgumentNullException.ThrowIfNull(setting);
        RiskNotesTexts texts = new(setting.Language);
        Practical practical = setting.Practical;
        PaperBlock[] content =
        [
            new PaperBlock.Panel(PanelKind.Caution, texts.BeforeHeading, [new PaperBlock.Paragraph(texts.Before)]),
            new PaperBlock.Heading(texts.ActivityHeading),
            .. Shown(setting, new PaperBlock.Paragraph(Activity(setting, texts))),
            new PaperBlock.Heading(texts.SubstancesHeading),
            new PaperBlock.Table(Substances(setting, texts)),
            new PaperBlock.Paragraph(texts.StandingNote, ParagraphLook.Small),
            .. practical.Hazards.Any(h => h.Material is null)
                ? (PaperBlock[])[new PaperBlock.Heading(texts.ActsHeading), new PaperBlock.Table(Acts(setting, texts))] : [],
            .. Causes(setting, texts),
            .. Emergencies(setting, texts),
            .. Disposal(setting, texts),
            new PaperBlock.Heading(texts.BlanksHeading),
            new PaperBlock.Table(Blanks(setting, texts)),
        ];
        return setting.Paper("risk-notes", texts.Kind, texts.Title(practical.Title), content, setting.Look.Denser());
    }

    /// <summary>What is done, with the first drawing of the apparatus beside it, or below where the letters are large: a risk depends on what stands
    /// where.</summary>
    private static IEnumerable<PaperBlock> Shown(PaperSetting setting, PaperBlock activity)
    {
        if (setting.Practical.Drawings is not [Drawing drawing, ..])
        {
            return [activity];
        }

        bool large = setting.Look.IsLarge;
        SvgPicture picture = ApparatusDrawing.Picture(drawing, $"risk-{drawing.Id}", large ? DrawingSize.Wide : DrawingSize.Narrow, setting.Language);
        var figure = new PaperBlock.Figure(picture, drawing.Label, large ? LargeDrawing : SmallDrawing);
        return large ? [activity, figure] : [new PaperBlock.Beside([activity], [figure], leftShare: 0.62)];
    }

    private static string Activity(PaperSetting setting, RiskNotesTexts texts)
    {
        PlanSettings plan = setting.Plan.Settings;
        AmountLimits limits = plan.Practical.Limits;
        string largest = limits.LargestSample.ToString("0.######", CultureInfo.InvariantCulture);
        string grams = plan.SampleInGrams.ToString("0.######", CultureInfo.InvariantCulture);
        string title = setting.Practical.Title;
        string groups = plan.Groups == 1 ? texts.AsDemonstration : texts.InGroups(Sentences.Count(plan.Groups), Sentences.Count(plan.Students));
        string used = PlanSettings.MostHeatings(plan.Practical) == 1 ? texts.Used(grams)
            : texts.UsedAndHeated(grams, plan.Heatings == 1 ? texts.HeatedOnce : texts.HeatedTimes(Sentences.Count(plan.Heatings)));
        string most = limits.Note is string note ? texts.MostWithNote(largest, limits.Unit, note) : texts.Most(largest, limits.Unit);
        // Where nothing is chosen or weighed out, no gram of the plan stands for what a group takes.
        return plan.Practical switch
        {
            { Amounts: null } => texts.ActivityCounted(title, groups, most),
            { Limits.IsDemonstration: true } => texts.ActivityShown(title, used, most),
            { WeighsOutSample: false } => texts.ActivityMade(title, groups, plan.Practical.Quantities.First(q => q.Id == plan.Practical.Findings.Sample).Label, used, most),
            _ => texts.Activity(title, groups, used, most, (plan.SampleInGrams * plan.Groups * plan.Trials).ToString("0.###", CultureInfo.InvariantCulture)),
        };
    }

    private static PaperTable Substances(PaperSetting setting, RiskNotesTexts texts) => new(
        [
            new(texts.SubstanceColumn, 2), new(texts.SignalColumn, 1.15), new(texts.ClassesColumn, 2.1),
            new(texts.LookedUpColumn, 1.4), new(texts.HarmColumn, 2.35), new(texts.ControlColumn, 2.5),
        ],
        [.. setting.Practical.Hazards.Where(h => h.Material is not null).Select(h => Substance(setting, h, texts))]);

    private static PaperCell[] Substance(PaperSetting setting, Hazard hazard, RiskNotesTexts texts)
    {
        string name = Text.Capital(hazard.Of);
        string substance = setting.Practical.Materials.First(m => m.Id == hazard.Material).Form is string form ? texts.SubstanceInForm(name, form) : name;
        GhsClassification? ghs = hazard.Ghs;
        string classes = ghs is null ? Unknown
            : ghs.Classes.Count == 0 ? texts.NotClassified
            : texts.ClassesAndCodes(string.Join("; ", ghs.Classes), string.Join(", ", ghs.Codes));
        string signal = ghs?.Signal switch { GhsSignal.Danger => texts.SignalDanger, GhsSignal.Warning => texts.SignalWarning, _ => Unknown };
        string looked = ghs is null ? texts.LookUp : ghs.Source ?? texts.StandingLookUp(Sentences.Of(ghs.Standing, setting.Language));
        string standing = hazard.Source is string source && source != ghs?.Source ? texts.HarmFrom(looked, source) : looked;
        return [new PaperCell(substance, IsHeading: true), signal, classes, standing, Text.Capital(hazard.Harm), Text.Capital(hazard.Control)];
    }

    private static PaperTable Acts(PaperSetting setting, RiskNotesTexts texts) => new(
        [new(texts.WhatColumn, 1.6), new(texts.HarmColumn, 2.2), new(texts.ControlColumn, 3.6), new(texts.StandingColumn, 1.1)],
        [
            .. setting.Practical.Hazards.Where(h => h.Material is null).Select(h => (PaperCell[])
            [
                new PaperCell(Text.Capital(h.Of), IsHeading: true), Text.Capital(h.Harm), Text.Capital(h.Control), h.Source ?? Sentences.Of(h.Standing, setting.Language),
            ]),
        ]);

    /// <summary>What makes a good result also keeps the class safe: flames, lids and warm vessels.</summary>
    private static IEnumerable<PaperBlock> Causes(PaperSetting setting, RiskNotesTexts texts)
    {
        Practical practical = setting.Practical;
        SharedTexts shared = new(setting.Language);
        Phrase[] stops = [.. practical.Observations.Where(o => o.Stop).Select(o => Phrase.Of(shared.Sentence(Text.Capital(o.Label))))];
        if (stops.Length > 0)
        {
            yield return new PaperBlock.Heading(texts.StopsHeading);
            yield return new PaperBlock.Items(ListKind.Bullets, stops, columns: 2);
        }

        yield return new PaperBlock.Heading(texts.SupervisionHeading);
        double gasOff = practical.Classroom.GasOffInMinutes;
        yield return new PaperBlock.Paragraph(
            !practical.Kit.Any(k => k.Flame) ? texts.SupervisionWithoutFlame
            : gasOff > 0 ? texts.SupervisionWithGas(gasOff.ToString("0.#", CultureInfo.InvariantCulture)) : texts.Supervision);
    }

    private static IEnumerable<PaperBlock> Emergencies(PaperSetting setting, RiskNotesTexts texts)
    {
        if (setting.Practical.Emergencies.Count > 0)
        {
            yield return new PaperBlock.Heading(texts.EmergenciesHeading);
            yield return new PaperBlock.Table(new PaperTable(
                [new(texts.WhenColumn, 2), new(texts.ActColumn, 5), new(texts.StandingColumn, 1.1)],
                [.. setting.Practical.Emergencies.Select(e => (PaperCell[])[new PaperCell(Text.Capital(e.When), IsHeading: true), Text.Capital(e.Act), e.Source ?? Sentences.Of(e.Standing, setting.Language)])]));
        }
    }

    private static IEnumerable<PaperBlock> Disposal(PaperSetting setting, RiskNotesTexts texts)
    {
        if (setting.Practical.Technician.Waste.Count > 0)
        {
            yield return new PaperBlock.Heading(texts.DisposalHeading);
            SharedTexts shared = new(setting.Language);
            yield return new PaperBlock.Items(ListKind.Bullets, [.. setting.Practical.Technician.Waste.Select(w => Phrase.Of(shared.Sentence(Text.Capital(w))))]);
        }
    }

    private static PaperTable Blanks(PaperSetting setting, RiskNotesTexts texts) => new(
        [new("", 2.2), new("", 3.4), new("", 1.4), new("", 2)],
        [
            [Name(texts.Needs), "", Name(texts.Class), setting.Occasion.ClassName ?? ""],
            [Name(texts.ModelAssessment), "", Name(texts.LessonDate), setting.Occasion.Date ?? ""],
            [Name(texts.TriedBy), "", Name(texts.TriedOn), ""],
            [Name(texts.AssessedBy), "", Name(texts.AssessedOn), ""],
            [Name(texts.ReviewWhen), "", Name(texts.ReviewBy), ""],
        ],
        TableRuling.Framed);

    private static PaperCell Name(string text) => new(Phrase.Bold(text), 8, IsHeading: true);
}
