using Calx.Papers.Reports;
using System.Globalization;
using Calx.Papers.Documents;
using Calx.Papers.Plans;
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
        TechnicianDefinition technician = setting.Practical.Technician;
        PreparationStep[] prepare = [.. technician.Prepare.Where(p => p.Step is null || IsPrepared(p.Step, setting.Plan.Settings))];
        PaperBlock[] content =
        [
            Occasion(setting),
            new PaperBlock.Heading("To put out"),
            new PaperBlock.Table(Kit(setting.Plan, stock)),
            new PaperBlock.Paragraph(Note(setting, stock), ParagraphLook.Small),
            .. prepare.Length == 0 ? [] : (PaperBlock[])[new PaperBlock.Heading("To prepare"), new PaperBlock.Table(Preparation(prepare, setting))],
            new PaperBlock.Heading("Balances"),
            new PaperBlock.Table(Balances(setting.Plan.Settings)),
            .. Lists(setting, technician),
        ];
        return setting.Paper("requisition", "Requisition", $"Requisition: {setting.Practical.Title}", content, setting.Look.Denser());
    }

    /// <summary>What the plan leaves to the lesson is not prepared before it, and the other way round.</summary>
    private static bool IsPrepared(string stepId, PlanSettings plan) =>
        plan.Practical.Steps.FirstOrDefault(s => s.Id == stepId) is LessonStep step && !plan.IsInLesson(step) && plan.IsDone(step);

    private static PaperBlock.Table Occasion(PaperSetting setting)
    {
        PaperOccasion said = setting.Occasion;
        PlanSettings plan = setting.Plan.Settings;
        string class_ = string.Create(CultureInfo.InvariantCulture, $"{said.ClassName ?? ""}, {plan.Students} students in {plan.Groups} groups");
        return new PaperBlock.Table(new PaperTable(
            [new("", 1.1), new("", 2.4), new("", 1.1), new("", 2.4)],
            [
                [Head("Teacher"), said.Teacher ?? "", Head("Class"), class_.TrimStart(',', ' ')],
                [Head("Date"), said.Date ?? "", Head("Period"), said.Period ?? ""],
                [Head("Room"), said.Room ?? "", Head("Notice"), setting.Practical.Technician.NoticeInHours is > 0 and var hours ? string.Create(CultureInfo.InvariantCulture, $"{hours:0.#} h before the lesson") : ""],
            ],
            TableRuling.Framed));

        static PaperCell Head(string text) => new(Phrase.Bold(text), 7, IsHeading: true);
    }

    private static PaperTable Kit(Plan plan, PlanStock stock) => new(
        [new("Item", 4.6), new("Needed", 1, true), new("Spare", 1, true), new("Out", 1, true), new("Back", 1, true), new("Broken", 1, true)],
        [
            .. plan.Kit.Select(kit => (PaperCell[])
            [
                new PaperCell(Label(kit, plan, stock), IsHeading: true), Amount(kit, kit.Amount), Amount(kit, kit.SpareAmount), Amount(kit, kit.Total), "", "",
            ]),
        ]);

    private static string Label(KitCount kit, Plan plan, PlanStock stock) => stock.LengthInMetres(kit) is double metres && stock.GramsPerMetre is double metre
        ? string.Create(CultureInfo.InvariantCulture, $"{kit.Item.Label}: {100 * plan.Settings.SampleInGrams / metre:F0} cm each, {metres:0.0#} m in all")
        : kit.Item.Label;

    private static string Amount(KitCount kit, double amount) =>
        KitAmount.Of(amount) + (kit.Item.Need.Unit is string unit ? $"\u00a0{unit}" : string.Empty);

    private static string Note(PaperSetting setting, PlanStock stock)
    {
        bool cut = stock.GramsPerMetre is null && setting.Plan.Kit.Any(k => k.Item.Need.IsCut);
        return "Spares are enough for what breaks 95 times in 100."
            + (cut ? " Weigh a metre of what is cut from a coil: its length follows from that." : "");
    }

    private static PaperTable Preparation(PreparationStep[] prepare, PaperSetting setting)
    {
        double[] minutes = [.. prepare.Select(p => p.Minutes + (p.MinutesPerGroup * setting.Plan.Settings.Groups))];
        IEnumerable<PaperCell[]> rows = prepare.Zip(minutes, (p, m) => (PaperCell[])[Text.Capital(p.Say), Whole(m), ""]);
        return new PaperTable(
            [new("What", 6), new("Minutes", 1, true), new("Done", 1)],
            [.. rows, [new PaperCell(Phrase.Bold("In all"), IsHeading: true), new PaperCell(Phrase.Bold(Whole(minutes.Sum()))), ""]]);
    }

    private static string Whole(double minutes) => Math.Ceiling(minutes).ToString("F0", CultureInfo.InvariantCulture);

    private static PaperTable Balances(PlanSettings plan) => new(
        [new("Balance", 2.4), new("Mass piece / g", 1.4, true), new("It shows / g", 1.4, true), new("Level, zero, mains", 1.6)],
        [
            .. plan.Balances.Select((b, i) => (PaperCell[])
            [
                new PaperCell(string.Create(CultureInfo.InvariantCulture, $"{(char)('A' + (i % 26))}: shows {b.ResolutionInGrams:0.#####} g"), 7, IsHeading: true), "", "", "",
            ]),
        ],
        TableRuling.Framed);

    private static IEnumerable<PaperBlock> Lists(PaperSetting setting, TechnicianDefinition technician)
    {
        string[] hazards = [.. setting.Practical.Hazards.Where(h => h.Material is not null).Select(h => $"{Text.Capital(h.Of)}: {h.Harm}. {Text.Capital(h.Control)}.")];
        if (hazards.Length > 0)
        {
            yield return new PaperBlock.Heading("Hazards of what is handled");
            yield return new PaperBlock.Items(ListKind.Bullets, [.. hazards.Select(Phrase.Of)]);
        }

        if (technician.Waste.Count + technician.Returns.Count > 0)
        {
            yield return new PaperBlock.Heading("Waste and what comes back");
            yield return new PaperBlock.Items(ListKind.Ticks, [.. technician.Waste.Concat(technician.Returns).Select(t => Phrase.Of($"{Text.Capital(t)}."))], columns: setting.Look.IsLarge ? 1 : 2);
        }

        yield return new PaperBlock.Paragraph(
            Phrase.Bold("Your employer’s risk assessment and local rules decide.").Then(" This list replaces neither. Tried out by ____________  on ____________    Teacher ____________"), ParagraphLook.Small);
    }
}
