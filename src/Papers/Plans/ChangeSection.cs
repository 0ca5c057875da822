using System.Text;
using Calx.Papers.Reports;
using Calx.Practicals.Clock;
using Calx.Practicals.Planning;
using Calx.Practicals.Planning.Amounts;
using Calx.Practicals.Planning.Words;

namespace Calx.Papers.Plans;

/// <summary>What a change of the plan would buy, or cost, in its conclusions.</summary>
internal static class ChangeSection
{
    public static void Write(StringBuilder page, Plan plan)
    {
        if (plan.Amounts.Changes.Count == 0)
        {
            return;
        }

        var table = new ReportTable(
            "changes", "What a change would buy", ("instead", false), ("one group: right", true), ("class: right", true), ("class: wrong", true));
        table.Under("Times in 100, of the conclusion that is hardest to reach. Time is left aside.");
        foreach (AmountChange change in plan.Amounts.Changes.Prepend(new AmountChange("", "as planned", plan.Amounts.Planned)))
        {
            table.Add(
                change.Label, Odds.InHundred(change.Then.GroupRight), Odds.InHundred(change.Then.ClassRight), Odds.InHundred(change.Then.ClassWrong));
        }

        table.Write(page);
    }
}
