using System.Globalization;
using System.Text;
using Calx.Papers.Charts;
using Calx.Papers.Reports;
using Calx.Practicals.Clock;
using Calx.Practicals.Definition;
using Calx.Practicals.Planning;
using Calx.Practicals.Planning.Amounts;
using Calx.Practicals.Planning.Words;

namespace Calx.Papers.Plans;

/// <summary>What one group and the class can conclude, as a table and over the mass of the sample.</summary>
internal static class ConclusionSection
{
    public static void Write(StringBuilder page, Plan plan)
    {
        AmountPoint planned = plan.Amounts.Planned;
        var table = new ReportTable(
            "conclusions", "What the class can conclude",
            ("conclusion", false), ("one group: right", true), ("one group: wrong", true), ("class: right", true), ("class: wrong", true));
        table.Under(string.Create(
            CultureInfo.InvariantCulture,
            $"Times in 100, with {planned.SampleInGrams:0.######} g of sample. In the rest the readings leave it open.{Undecidable(plan)}"));
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
        if (AmountChart.Of(plan.Amounts, plan.Settings.Groups) is Chart chart)
        {
            ReportPage.Charts(page, [chart], "chart-alone");
        }
    }

    private static string Undecidable(Plan plan) =>
        plan.Undecidable.Count == 0 ? string.Empty : " A dash: the planned readings cannot decide it, whatever they are.";
}
