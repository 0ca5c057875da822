using Calx.Papers.Documents;
using Calx.Papers.Texts;
using Calx.Practicals.Clock;
using Calx.Practicals.Definition;
using Calx.Practicals.Model;
using Calx.Practicals.Readings;

namespace Calx.Papers.Handouts;

/// <summary>The table that a group writes its readings in: quantity / unit at the side, as many columns as trials, and what a whole
/// reading looks like.</summary>
internal static class SheetReadings
{
    private const double RowInMillimetres = 7.5;

    public static IReadOnlyList<PaperBlock> Of(PaperSetting setting)
    {
        StudentSheetTexts texts = new(setting.Language);
        PlanSettings plan = setting.Plan.Settings;
        PaperColumn[] columns = plan.Trials == 1
            ? [new(texts.ReadingColumn, 4.2), new(texts.WrittenColumn, 1.6, IsNumber: true), new(texts.Balance, 1.3), new(texts.TimeColumn, 0.9)]
            : [new(texts.ReadingColumn, 3), .. Enumerable.Range(1, plan.Trials).Select(t => new PaperColumn(texts.TrialColumn(Sentences.Count(t)), 1.2, IsNumber: true))];
        PaperCell[][] rows =
        [
            .. Weighings(plan).Select(weighing => (PaperCell[])[new(Heading(plan.Practical, weighing), RowInMillimetres, IsHeading: true), .. Blanks(plan, weighing, columns.Length - 1)]),
        ];
        return
        [
            new PaperBlock.Table(new PaperTable(columns, rows, TableRuling.Framed)),
            new PaperBlock.Paragraph(Decimals(plan, setting.Language), ParagraphLook.Small),
        ];
    }

    /// <summary>No letter of a balance belongs to a time or a temperature.</summary>
    private static IEnumerable<PaperCell> Blanks(PlanSettings plan, Weighing weighing, int columns)
    {
        bool balance = plan.Trials > 1 || plan.Practical.Reading(weighing.Reading).IsWeighing;
        return Enumerable.Range(0, columns).Select(i => new PaperCell(balance || i != 1 ? "" : "–"));
    }

    /// <summary>What a group may write down, in order: each reading as often as the plan has it taken.</summary>
    public static IEnumerable<Weighing> Weighings(PlanSettings plan) =>
        from reading in plan.Practical.Readings
        where !plan.Unread.Contains(reading.Id)
        from occurrence in Enumerable.Range(1, Times(reading, plan))
        select new Weighing(reading.Id, occurrence);

    /// <summary>How a weighing is headed: quantity / unit.</summary>
    public static string Heading(Practical practical, Weighing weighing) =>
        Sentences.Heading(ReadingNames.Of(practical, weighing.Reading, weighing.Occurrence), practical.Reading(weighing.Reading).Unit);

    /// <summary>A row more than the planned heatings where the practical allows one: a group whose mass still changes needs it.</summary>
    private static int Times(ReadingDefinition reading, PlanSettings plan) =>
        reading.Repeats <= 1 ? 1 : Math.Min(reading.Repeats, plan.Heatings > 1 ? plan.Heatings + 1 : 1);

    private static string Decimals(PlanSettings plan, PaperLanguage language)
    {
        StudentSheetTexts texts = new(language);
        int[] decimals = [.. plan.Balances.Select(b => b.Decimals).Distinct().Order()];
        return decimals.Length == 1
            ? texts.DecimalsOfBalance(DecimalsInWords.Of(decimals[0], language.Engine))
            : texts.DecimalsOfBalances(Sentences.Or([.. decimals.Select(d => DecimalsInWords.Of(d, language.Engine))], language));
    }
}
