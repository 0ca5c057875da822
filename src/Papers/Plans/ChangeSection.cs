using System.Text;
using Calx.Papers.Reports;
using Calx.Papers.Texts;
using Calx.Practicals.Clock;
using Calx.Practicals.Planning;
using Calx.Practicals.Planning.Amounts;
using Calx.Practicals.Planning.Words;

namespace Calx.Papers.Plans;

/// <summary>What a change of the plan would buy, or cost, in its conclusions.</summary>
internal static class ChangeSection
{
    public static void Write(StringBuilder page, Plan plan, PlanTexts texts)
    {
        if (plan.Amounts.Changes.Count == 0)
        {
            return;
        }

        var table = new ReportTable(
            "changes", texts.ChangesHeading, (texts.InsteadColumn, false), (texts.GroupRight, true), (texts.ClassRight, true), (texts.ClassWrong, true));
        table.Under(texts.ChangesNote);
        foreach (AmountChange change in plan.Amounts.Changes.Prepend(new AmountChange("", texts.AsPlanned, plan.Amounts.Planned)))
        {
            table.Add(
                change.Label, Odds.InHundred(change.Then.GroupRight), Odds.InHundred(change.Then.ClassRight), Odds.InHundred(change.Then.ClassWrong));
        }

        table.Write(page);
    }
}
