using Calx.Papers.Reports;
using System.Globalization;
using Calx.Papers.Documents;
using Calx.Papers.Plans;
using Calx.Papers.Texts;
using Calx.Practicals.Clock;
using Calx.Practicals.Definition;
using Calx.Practicals.Planning;

namespace Calx.Papers.Handouts;

/// <summary>What the technician puts out, prepares, counts and takes back: one side.</summary>
public static class RequisitionSheet
{
    /// <summary>Makes it.</summary>
    /// <param name="setting">The lesson.</param>
    /// <param name="stock">What is known of the school's stock; null for nothing.</param>
    public static Paper Of(PaperSetting setting, PlanStock? stock = null)
    {
        ArgumentNullException.ThrowIfNull(setting);
        stock ??= PlanStock.Unknown;
        RequisitionTexts texts = new(setting.Language);
        TechnicianDefinition technician = setting.Practical.Technician;
        (PreparationStep Step, double Minutes)[] prepare = [.. Prepared(setting.Plan.Settings)];
        PaperBlock[] content =
        [
            Occasion(setting, texts),
            new PaperBlock.Heading(texts.KitHeading),
            new PaperBlock.Table(Kit(setting.Plan, stock, texts)),
            new PaperBlock.Paragraph(Note(setting, stock, texts), ParagraphLook.Small),
            .. prepare.Length == 0 ? [] : (PaperBlock[])[new PaperBlock.Heading(texts.PrepareHeading), new PaperBlock.Table(Preparation(prepare, texts))],
            new PaperBlock.Heading(texts.BalancesHeading),
            new PaperBlock.Table(Balances(setting.Plan.Settings, texts)),
            .. Lists(setting, technician, texts),
        ];
        return setting.Paper("requisition", texts.Kind, texts.Title(setting.Practical.Title), content, setting.Look.Denser());
    }

    /// <summary>What the technician prepares for a plan, with its minutes.</summary>
    internal static IEnumerable<(PreparationStep Step, double Minutes)> Prepared(PlanSettings plan) => plan.Practical.Technician.Prepare
        .Where(p => p.Step is null || IsPrepared(p.Step, plan)).Select(p => (p, p.Minutes + (p.MinutesPerGroup * plan.Groups)));

    /// <summary>What the plan leaves to the lesson is not prepared before it, and the other way round.</summary>
    private static bool IsPrepared(string stepId, PlanSettings plan) =>
        plan.Practical.Steps.FirstOrDefault(s => s.Id == stepId) is LessonStep step && !plan.IsInLesson(step) && plan.IsDone(step);

    private static PaperBlock.Table Occasion(PaperSetting setting, RequisitionTexts texts)
    {
        PaperOccasion said = setting.Occasion;
        PlanSettings plan = setting.Plan.Settings;
        (string students, string groups) = (Sentences.Count(plan.Students), Sentences.Count(plan.Groups));
        string size = (said.ClassName, plan.Groups) switch
        {
            (string name, 1) => texts.ClassDemonstration(name, students),
            (null, 1) => texts.Demonstration(students),
            (string name, _) => texts.ClassInGroups(name, students, groups),
            _ => texts.Groups(students, groups),
        };
        string notice = setting.Practical.Technician.NoticeInHours is > 0 and var hours ? texts.HoursBefore(hours.ToString("0.#", CultureInfo.InvariantCulture)) : "";
        return new PaperBlock.Table(new PaperTable(
            [new("", 1.1), new("", 2.4), new("", 1.1), new("", 2.4)],
            [
                [Head(texts.Teacher), said.Teacher ?? "", Head(texts.Class), size],
                [Head(texts.Date), said.Date ?? "", Head(texts.Period), said.Period ?? ""],
                [Head(texts.Room), said.Room ?? "", Head(texts.Notice), notice],
            ],
            TableRuling.Framed));

        static PaperCell Head(string text) => new(Phrase.Bold(text), 7, IsHeading: true);
    }

    private static PaperTable Kit(Plan plan, PlanStock stock, RequisitionTexts texts) => new(
        [
            new(texts.ItemColumn, 4.6), new(texts.NeededColumn, 1, true), new(texts.SpareColumn, 1, true),
            new(texts.OutColumn, 1, true), new(texts.BackColumn, 1, true), new(texts.BrokenColumn, 1, true),
        ],
        [
            .. plan.Kit.Select(kit => (PaperCell[])
            [
                new PaperCell(Label(kit, plan, stock, texts), IsHeading: true), Amount(kit, kit.Amount), Amount(kit, kit.SpareAmount), Amount(kit, kit.Total), "", "",
            ]),
        ]);

    private static string Label(KitCount kit, Plan plan, PlanStock stock, RequisitionTexts texts) =>
        stock.LengthInMetres(kit) is double metres && stock.GramsPerMetre is double metre
        ? texts.CutItem(
            kit.Item.Label,
            (100 * plan.Settings.SampleInGrams / metre).ToString("F0", CultureInfo.InvariantCulture),
            metres.ToString("0.0#", CultureInfo.InvariantCulture))
        : kit.Item.Label;

    private static string Amount(KitCount kit, double amount) =>
        KitAmount.Of(amount) + (kit.Item.Need.Unit is string unit ? $"\u00a0{unit}" : string.Empty);

    private static string Note(PaperSetting setting, PlanStock stock, RequisitionTexts texts)
    {
        bool cut = stock.GramsPerMetre is null && setting.Plan.Kit.Any(k => k.Item.Need.IsCut);
        return cut ? texts.SparesAndCut : texts.Spares;
    }

    private static PaperTable Preparation((PreparationStep Step, double Minutes)[] prepare, RequisitionTexts texts)
    {
        IEnumerable<PaperCell[]> rows = prepare.Select(p => (PaperCell[])[Text.Capital(p.Step.Say), Whole(p.Minutes), ""]);
        return new PaperTable(
            [new(texts.WhatColumn, 6), new(texts.MinutesColumn, 1, true), new(texts.DoneColumn, 1)],
            [.. rows, [new PaperCell(Phrase.Bold(texts.InAll), IsHeading: true), new PaperCell(Phrase.Bold(Whole(prepare.Sum(p => p.Minutes)))), ""]]);
    }

    private static string Whole(double minutes) => Math.Ceiling(minutes).ToString("F0", CultureInfo.InvariantCulture);

    private static PaperTable Balances(PlanSettings plan, RequisitionTexts texts) => new(
        [new(texts.BalanceColumn, 2.4), new(texts.MassPieceColumn, 1.4, true), new(texts.ShownColumn, 1.4, true), new(texts.LevelColumn, 1.6)],
        [
            .. plan.Balances.Select((b, i) => (PaperCell[])
            [
                new PaperCell(texts.BalanceShows($"{(char)('A' + (i % 26))}", b.ResolutionInGrams.ToString("0.#####", CultureInfo.InvariantCulture)), 7, IsHeading: true), "", "", "",
            ]),
        ],
        TableRuling.Framed);

    private static IEnumerable<PaperBlock> Lists(PaperSetting setting, TechnicianDefinition technician, RequisitionTexts texts)
    {
        string[] hazards = [.. setting.Practical.Hazards.Where(h => h.Material is not null).Select(h => texts.Hazard(Text.Capital(h.Of), h.Harm, Text.Capital(h.Control)))];
        if (hazards.Length > 0)
        {
            yield return new PaperBlock.Heading(texts.HazardsHeading);
            yield return new PaperBlock.Items(ListKind.Bullets, [.. hazards.Select(Phrase.Of)]);
        }

        if (technician.Waste.Count + technician.Returns.Count > 0)
        {
            SharedTexts shared = new(setting.Language);
            yield return new PaperBlock.Heading(texts.WasteHeading);
            yield return new PaperBlock.Items(ListKind.Ticks, [.. technician.Waste.Concat(technician.Returns).Select(t => Phrase.Of(shared.Sentence(Text.Capital(t))))], columns: setting.Look.IsLarge ? 1 : 2);
        }

        yield return new PaperBlock.Paragraph(
            Phrase.Bold(texts.RulesDecide).Then($" {texts.ToFillIn}"), ParagraphLook.Small);
    }
}
