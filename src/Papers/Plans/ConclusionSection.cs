using System.Globalization;
using System.Text;
using Calx.Papers.Charts;
using Calx.Papers.Reports;
using Calx.Papers.Texts;
using Calx.Practicals.Clock;
using Calx.Practicals.Definition;
using Calx.Practicals.Planning;
using Calx.Practicals.Planning.Amounts;
using Calx.Practicals.Planning.Words;

namespace Calx.Papers.Plans;

/// <summary>What one group and the class can conclude, as a table and over the mass of the sample.</summary>
internal static class ConclusionSection
{
    public static void Write(StringBuilder page, Plan plan, PaperLanguage language)
    {
        PlanTexts texts = new(language);
        AmountPoint planned = plan.Amounts.Planned;
        var table = new ReportTable(
            "conclusions", texts.ConclusionsHeading,
            (texts.ConclusionColumn, false), (texts.GroupRight, true), (texts.GroupWrong, true), (texts.ClassRight, true), (texts.ClassWrong, true));
        string grams = planned.SampleInGrams.ToString("0.######", CultureInfo.InvariantCulture);
        table.Under((plan.Settings.Practical.Amounts is not null, plan.Undecidable.Count == 0) switch
        {
            (true, true) => texts.ConclusionsNote(grams),
            (true, false) => texts.ConclusionsNoteWithDash(grams),
            (false, true) => texts.ConclusionsNoteUsual,
            _ => texts.ConclusionsNoteUsualWithDash,
        });
        foreach (ConclusionChance chance in planned.Chances)
        {
            table.Add(
                chance.Conclusion.Label,
                Odds.InHundred(chance.GroupRight.Value), Odds.InHundred(chance.GroupWrong.Value),
                Odds.InHundred(chance.ClassRight.Value), Odds.InHundred(chance.ClassWrong.Value));
        }

        foreach (ConclusionDefinition conclusion in plan.Undecidable)
        {
            table.Add(conclusion.Label, "–", "–", "–", "–");
        }

        table.Write(page);
        if (AmountChart.Of(plan.Amounts, plan.Settings.Groups, language) is Chart chart)
        {
            ReportPage.Charts(page, [chart], "chart-alone");
        }
    }
}
