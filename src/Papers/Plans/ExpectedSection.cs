using System.Text;
using Calx.Measurement.Numbers;
using Calx.Papers.Handouts;
using Calx.Papers.Reports;
using Calx.Papers.Texts;
using Calx.Practicals.Clock;
using Calx.Practicals.Model.Simulation;
using Calx.Practicals.Planning;
using Calx.Practicals.Planning.Words;

namespace Calx.Papers.Plans;

/// <summary>The readings that the teacher should expect to see, and what follows from them.</summary>
internal static class ExpectedSection
{
    /// <summary>Quantity calculus, 'mass / g', kept on one line.</summary>
    private const string BeforeUnit = "\u00a0/\u00a0";

    /// <summary>A reading that so many have is one that all have.</summary>
    private const double All = 0.995;

    public static void Write(StringBuilder page, Plan plan, PlanTexts texts)
    {
        WriteReadings(page, plan, texts);
        PredictedQuantity[] known = [.. plan.Expected.Quantities.Where(q => q.Value is not null)];
        if (known.Length == 0)
        {
            return;
        }

        var table = new ReportTable("values", texts.ValuesHeading, (texts.ValueColumn, false), (texts.MedianColumn, true), (texts.BetweenColumn, true));
        foreach (PredictedQuantity quantity in known)
        {
            PredictedValue value = quantity.Value!;
            int decimals = DecimalsOf(value, quantity.Quantity.Unit == "g" ? MostDecimals(plan) : Figures.MostDecimals);
            table.Add(WithUnit(quantity.Quantity.Label, quantity.Quantity.Unit), Figures.Text(value.Median, decimals), Between(value, decimals, texts));
        }

        table.Write(page);
    }

    private static void WriteReadings(StringBuilder page, Plan plan, PlanTexts texts)
    {
        int decimals = MostDecimals(plan);
        IReadOnlyList<PredictedReading> readings = plan.ExpectedReadings;
        bool parts = readings.Any(r => r.WithoutParts is not null);
        bool some = readings.Any(r => r.Written.Share < All);
        (string, bool)[] columns =
        [
            (texts.ReadingColumn, false), (texts.TypicalColumn, true), (texts.BetweenColumn, true),
            .. parts ? [(texts.ContentsMedianColumn, true), (texts.ContentsBetweenColumn, true)] : Array.Empty<(string, bool)>(),
            .. some ? [(texts.TakenColumn, true)] : Array.Empty<(string, bool)>(),
        ];
        var table = new ReportTable("expected", texts.ExpectedHeading, columns);
        foreach (PredictedReading reading in readings)
        {
            int shown = reading.Decimals ?? decimals;
            string[] without = reading.WithoutParts is PredictedValue contents
                ? [Figures.Text(contents.Median, decimals), Between(contents, decimals, texts)] : ["–", "–"];
            table.Add(
            [
                WithUnit(reading.Label, reading.Unit), Figures.Text(reading.Typical, shown), Between(reading.Written, shown, texts),
                .. parts ? without : [], .. some ? [Odds.InHundred(reading.Written.Share)] : Array.Empty<string>(),
            ]);
        }

        table.Under(texts.ExpectedNote(Sentences.Count(plan.Expected.Draws))).Write(page);
    }

    /// <summary>A twelfth of the 95 % interval, about a third of a standard deviation, is still told apart.</summary>
    private static int DecimalsOf(PredictedValue value, int most) =>
        Math.Min(most, Figures.DecimalsFor((value.Most.High - value.Most.Low) / 12));

    private static int MostDecimals(Plan plan) => plan.Settings.Balances.Max(b => b.Decimals);

    private static string WithUnit(string label, string unit) => unit == "1" ? label : label + BeforeUnit + unit;

    private static string Between(PredictedValue value, int decimals, PlanTexts texts) =>
        texts.Range(Figures.Text(value.Most.Low, decimals), Figures.Text(value.Most.High, decimals));
}
