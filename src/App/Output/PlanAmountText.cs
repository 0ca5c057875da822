using System.Globalization;
using Calx.Practicals.Clock;
using Calx.Practicals.Definition;
using Calx.Practicals.Model.Simulation;
using Calx.Practicals.Planning;
using Calx.Practicals.Planning.Amounts;
using Calx.Practicals.Planning.Words;

namespace Calx.App.Output;

/// <summary>What a plan says of amounts, conclusions and readings, in tables.</summary>
internal static class PlanAmountText
{
    public static void Write(TextWriter output, Plan plan)
    {
        WriteConclusions(output, plan);
        WriteCurve(output, plan);
        WriteChanges(output, plan);
        WriteReadings(output, plan);
    }

    private static void WriteConclusions(TextWriter output, Plan plan)
    {
        WrappedText.Heading(output, "Conclusions reached, times in 100");
        var columns = new Columns("lrrr");
        columns.AddHeading(12, "", "one group", "the class", "the class wrongly");
        foreach (ConclusionDefinition conclusion in plan.Wanted)
        {
            ConclusionChance? chance = plan.Amounts.Planned.Chances.FirstOrDefault(c => c.Conclusion.Id == conclusion.Id);
            columns.Add(conclusion.Label, Times(chance?.GroupRight), Times(chance?.ClassRight), Times(chance?.ClassWrong));
        }

        columns.Write(output);
    }

    private static void WriteCurve(TextWriter output, Plan plan)
    {
        if (plan.Amounts.Curve.Count == 0 || plan.Amounts.Planned.Chances.Count == 0)
        {
            return;
        }

        WrappedText.Heading(output, "By the amount (the hardest conclusion, times in 100; scatter: half the width of the middle 68 of 100)");
        var columns = new Columns("rrrrrrl");
        columns.AddHeading(12, "sample / g", "groups scatter / %", "classes scatter / %", "one group", "the class", "the class wrongly", "");
        foreach (AmountPoint point in plan.Amounts.Curve)
        {
            columns.Add(
                Grams(point.SampleInGrams), Percent(point.GroupSpread), Percent(point.ClassSpread),
                Odds.InHundred(point.GroupRight), Odds.InHundred(point.ClassRight), Odds.InHundred(point.ClassWrong), Mark(plan, point));
        }

        columns.Write(output);
    }

    private static string Mark(Plan plan, AmountPoint point) =>
        point == plan.Amounts.Smallest ? "the smallest that will do"
        : point == plan.Amounts.Best ? "more hardly helps"
        : "";

    private static void WriteChanges(TextWriter output, Plan plan)
    {
        if (plan.Amounts.Changes.Count == 0)
        {
            return;
        }

        WrappedText.Heading(output, "What a change would buy, time left aside (the hardest conclusion, times in 100)");
        var columns = new Columns("lrrr");
        columns.AddHeading(12, "", "one group", "the class", "the class wrongly");
        foreach (AmountChange change in plan.Amounts.Changes.Prepend(new AmountChange("", "as planned", plan.Amounts.Planned)))
        {
            columns.Add(change.Label, Odds.InHundred(change.Then.GroupRight), Odds.InHundred(change.Then.ClassRight), Odds.InHundred(change.Then.ClassWrong));
        }

        columns.Write(output);
    }

    private static void WriteReadings(TextWriter output, Plan plan)
    {
        int decimals = plan.Settings.Balances[0].Decimals;
        bool weighed = plan.Settings.Practical.Readings.All(r => r.IsWeighing);
        WrappedText.Heading(output, weighed ? "Readings to expect / g" : "Readings to expect");
        var columns = new Columns("lrlrl");
        columns.Add("", "typical", "95 of 100 groups", "less vessel", "95 of 100 groups");
        foreach (PredictedReading reading in plan.ExpectedReadings)
        {
            PredictedValue? rest = reading.WithoutParts;
            columns.Add(
                (weighed ? reading.Label : $"{reading.Label} / {reading.Unit}") + Taken(reading.Written),
                Figure.Fixed(reading.Typical, reading.Decimals ?? decimals),
                Between(reading.Written.Most, reading.Decimals ?? decimals),
                rest is null ? "" : Figure.Fixed(rest.Median, decimals + 1),
                rest is null ? "" : Between(rest.Most, decimals + 1));
        }

        columns.Write(output);
    }

    private static string Taken(PredictedValue value) => value.Share >= 1
        ? ""
        : string.Create(CultureInfo.InvariantCulture, $" (in {100 * value.Share:0} of 100 groups)");

    private static string Between((double Low, double High) interval, int decimals) =>
        $"{Figure.Fixed(interval.Low, decimals)} to {Figure.Fixed(interval.High, decimals)}";

    private static string Times(Share? share) => share is Share known ? Odds.InHundred(known.Value) : "-";

    private static string Percent(double? share) => share is double known ? (100 * known).ToString(known < 0.1 ? "F1" : "F0", CultureInfo.InvariantCulture) : "-";

    private static string Grams(double grams) => grams.ToString("0.######", CultureInfo.InvariantCulture);
}
