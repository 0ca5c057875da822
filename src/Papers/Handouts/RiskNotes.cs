using Calx.Papers.Reports;
using System.Globalization;
using Calx.Papers.Documents;
using Calx.Practicals.Clock;
using Calx.Practicals.Definition;

namespace Calx.Papers.Handouts;

/// <summary>Notes for the teacher's own risk assessment: hazards of what is handled and made, of things and steps, with controls,
/// supervision, emergencies, disposal, and the blanks that only somebody who knows the class and the room can fill. Nothing in it is approved.</summary>
public static class RiskNotes
{
    /// <summary>Stands above everything else.</summary>
    public const string Head = "Your employer’s risk assessment and local rules decide. These notes help to write your own; they approve nothing. Somebody competent who knows this class and this room checks them, looks up each substance in the supplier’s data sheet, and tries the practical out first.";

    /// <summary>Makes them.</summary>
    /// <param name="setting">The lesson.</param>
    public static Paper Of(PaperSetting setting)
    {
        ArgumentNullException.ThrowIfNull(setting);
        Practical practical = setting.Practical;
        PaperBlock[] content =
        [
            new PaperBlock.Panel(PanelKind.Caution, "Before anything else", [new PaperBlock.Paragraph(Head)]),
            new PaperBlock.Heading("What is done"),
            new PaperBlock.Paragraph(Activity(setting)),
            new PaperBlock.Heading("Substances: what is used and what is made"),
            new PaperBlock.Table(Substances(practical)),
            new PaperBlock.Paragraph("‘Looked up’ says how far a classification can be trusted here: literature names its source; memory and judgement have to be looked up. A dash: not classified, or not looked up.", ParagraphLook.Small),
            new PaperBlock.Heading("Things and acts"),
            new PaperBlock.Table(Acts(practical)),
            .. Causes(practical),
            .. Emergencies(practical),
            .. Disposal(practical),
            new PaperBlock.Heading("To be filled in"),
            new PaperBlock.Table(Blanks(setting)),
        ];
        return setting.Paper("risk-notes", "Risk notes", $"Notes for a risk assessment: {practical.Title}", content, setting.Look.Denser());
    }

    private static string Activity(PaperSetting setting)
    {
        PlanSettings plan = setting.Plan.Settings;
        string heated = plan.Heatings == 1 ? "heated once" : string.Create(CultureInfo.InvariantCulture, $"heated {plan.Heatings} times");
        string most = string.Create(CultureInfo.InvariantCulture, $"{plan.Practical.Limits.LargestSample:0.######} {plan.Practical.Limits.Unit}");
        string note = plan.Practical.Limits.Note is string said ? $" ({said})" : string.Empty;
        string groups = plan.Groups == 1 ? "as a demonstration" : string.Create(CultureInfo.InvariantCulture, $"in {plan.Groups} groups, {plan.Students} students");
        return string.Create(
            CultureInfo.InvariantCulture,
            $"{setting.Practical.Title}, {groups}. Each group uses {plan.SampleInGrams:0.######} g, {heated}; no group takes more than {most}{note}. Together the class uses {plan.SampleInGrams * plan.Groups * plan.Trials:0.###} g. Who can be harmed: students, teacher, technician, and whoever comes in.");
    }

    private static PaperTable Substances(Practical practical) => new(
        [new("Substance and form", 2), new("Signal word", 0.9), new("Classes and statements", 2.2), new("Looked up", 1.4), new("What can happen", 2.4), new("Control", 2.6)],
        [.. practical.Hazards.Where(h => h.Material is not null).Select(h => Substance(practical, h))]);

    private static PaperCell[] Substance(Practical practical, Hazard hazard)
    {
        string form = practical.Materials.First(m => m.Id == hazard.Material).Form is string said ? $", {said}" : string.Empty;
        GhsClassification? ghs = hazard.Ghs;
        string classes = ghs is null ? "–" : ghs.Classes.Count == 0 ? "not classified" : $"{string.Join("; ", ghs.Classes)}: {string.Join(", ", ghs.Codes)}";
        string signal = ghs?.Signal is GhsSignal.Danger or GhsSignal.Warning ? ghs.Signal.ToString() : "–";
        string standing = ghs is null ? "look it up" : ghs.Source is string source ? source : $"{Words(ghs.Standing)}: look it up";
        return [new PaperCell(Text.Capital(hazard.Of) + form, IsHeading: true), signal, classes, standing, Text.Capital(hazard.Harm), Text.Capital(hazard.Control)];
    }

    private static PaperTable Acts(Practical practical) => new(
        [new("What", 1.6), new("What can happen", 2.2), new("Control", 3.6), new("Standing", 1.1)],
        [
            .. practical.Hazards.Where(h => h.Material is null).Select(h => (PaperCell[])
            [
                new PaperCell(Text.Capital(h.Of), IsHeading: true), Text.Capital(h.Harm), Text.Capital(h.Control), h.Source ?? Words(h.Standing),
            ]),
        ]);

    /// <summary>What makes a good result also keeps the class safe: flames, lids and warm vessels.</summary>
    private static IEnumerable<PaperBlock> Causes(Practical practical)
    {
        Phrase[] stops = [.. practical.Observations.Where(o => o.Stop).Select(o => Phrase.Of(Text.Capital(o.Label) + "."))];
        if (stops.Length > 0)
        {
            yield return new PaperBlock.Heading("When work stops and the teacher is told");
            yield return new PaperBlock.Items(ListKind.Bullets, stops, columns: 2);
        }

        yield return new PaperBlock.Heading("Supervision");
        string gas = practical.Classroom.GasOffInMinutes > 0
            ? string.Create(CultureInfo.InvariantCulture, $" Every flame is out {practical.Classroom.GasOffInMinutes:0.#} min before the bell.") : string.Empty;
        yield return new PaperBlock.Paragraph(
            $"The teacher looks at each group before it lights, stays where all flames are seen, and knows where the gas is turned off for all.{gas} Hot things stay where they are until the technician has looked at them; nobody tests warmth by touch.");
    }

    private static IEnumerable<PaperBlock> Emergencies(Practical practical)
    {
        if (practical.Emergencies.Count > 0)
        {
            yield return new PaperBlock.Heading("In an emergency: local rules and first aiders come first");
            yield return new PaperBlock.Table(new PaperTable(
                [new("When", 2), new("What is done", 5), new("Standing", 1.1)],
                [.. practical.Emergencies.Select(e => (PaperCell[])[new PaperCell(Text.Capital(e.When), IsHeading: true), Text.Capital(e.Act), e.Source ?? Words(e.Standing)])]));
        }
    }

    private static IEnumerable<PaperBlock> Disposal(Practical practical)
    {
        if (practical.Technician.Waste.Count > 0)
        {
            yield return new PaperBlock.Heading("Disposal");
            yield return new PaperBlock.Items(ListKind.Bullets, [.. practical.Technician.Waste.Select(w => Phrase.Of($"{Text.Capital(w)}."))]);
        }
    }

    private static PaperTable Blanks(PaperSetting setting) => new(
        [new("", 2.2), new("", 3.4), new("", 1.4), new("", 2)],
        [
            [Name("Medical and access needs in this class"), "", Name("Class"), setting.Occasion.ClassName ?? ""],
            [Name("Employer’s model assessment used"), "", Name("Date of lesson"), setting.Occasion.Date ?? ""],
            [Name("Tried out by, and what was changed"), "", Name("Tried out on"), ""],
            [Name("Assessed by"), "", Name("Date"), ""],
            [Name("To be looked at again when"), "", Name("By"), ""],
        ],
        TableRuling.Framed);

    private static PaperCell Name(string text) => new(Phrase.Bold(text), 8, IsHeading: true);

    private static string Words(Standing standing) => standing switch
    {
        Standing.CommonPractice => "common practice",
        Standing.Literature => "literature",
        Standing.Memory => "memory",
        Standing.Computed => "computed",
        _ => "judgement",
    };
}
