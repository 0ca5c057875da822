using System.Globalization;
using Calx.Measurement.Numbers;
using Calx.Practicals.Definition;
using Calx.Practicals.Findings;
using Calx.Practicals.Inference;
using Calx.Practicals.Readings;
using Calx.Practicals.Texts;

namespace Calx.App.Output;

/// <summary>A class's findings on the terminal, as a teacher reads them: words first, then the tables behind them.</summary>
internal static class FindingsText
{
    private const int WidestHeading = 20;

    public static void Write(TextWriter output, ClassFindings findings)
    {
        output.WriteLine($"{findings.Practical.Title}: what the class's readings show");
        output.WriteLine();
        foreach (string sentence in findings.Class.Conclusion)
        {
            WrappedText.Write(output, sentence, first: "  - ", then: "    ");
        }

        WriteGroups(output, findings);
        SeriesText.Write(output, findings);
        WriteOdd(output, findings);
        WriteCauses(output, findings);
        WriteClass(output, "Class", findings.Class);
        foreach (ArmFindings arm in findings.Arms)
        {
            WriteClass(output, $"Class: {arm.Label}", arm.Result);
        }

        WriteTable(output, findings);
    }

    private static void WriteGroups(TextWriter output, ClassFindings findings)
    {
        QuantityDefinition[] shown = [.. ShownQuantities(findings)];
        string from = findings.Practical.Readings.All(r => r.IsWeighing) ? "the balance" : "balance and instruments";
        WrappedText.Heading(output, $"Groups (value ± standard uncertainty from {from})");
        bool repeats = findings.Practical.Findings.ConstantMass is not null;
        var columns = new Columns("l" + new string('r', shown.Length) + (repeats ? "ll" : "l"));
        columns.AddHeading(WidestHeading, ["group", .. shown.Select(HeadingOf), .. repeats ? ["constant mass"] : Array.Empty<string>(), ""]);
        foreach (GroupFindings group in findings.Groups)
        {
            columns.Add(
            [
                group.Name,
                .. shown.Select(q => group.Find(q.Id)?.Text ?? "-"),
                .. repeats ? [WeighedAfterHeating(findings.Practical, group) ? group.ConstantMassInWords ?? "-" : "-"] : Array.Empty<string>(),
                group.IsAnomalous ? "look into this" : "",
            ]);
        }

        columns.Write(output);
    }

    private static bool WeighedAfterHeating(Practical practical, GroupFindings group) =>
        group.Readings.Readings.Any(r => r.BaseId == practical.Findings.ConstantMass?.Reading);

    private static void WriteOdd(TextWriter output, ClassFindings findings)
    {
        GroupFindings[] odd = [.. findings.Groups.Where(g => g.IsAnomalous)];
        if (odd.Length == 0)
        {
            return;
        }

        WrappedText.Heading(output, "Results to look into");
        foreach (GroupFindings group in odd)
        {
            string seen = group.Readings.Remarks.Observations.Count == 0
                ? ""
                : $" The group noted: {string.Join("; ", group.Readings.Remarks.Observations)}.";
            WrappedText.Write(output, $"{group.Name}: {group.Oddity.Reason}{seen}", first: "  ", then: "    ");
        }
    }

    private static void WriteCauses(TextWriter output, ClassFindings findings)
    {
        string[] lines = [.. CausesText.Lines(findings)];
        if (lines.Length == 0)
        {
            return;
        }

        WrappedText.Heading(output, "What may have happened");
        foreach (string line in lines)
        {
            WrappedText.Write(output, line, first: "  ", then: "    ");
        }
    }

    private static void WriteClass(TextWriter output, string heading, ClassResult result)
    {
        if (result.Quantities.Count == 0)
        {
            return;
        }

        WrappedText.Heading(output, heading);
        var columns = new Columns("lrlrrr");
        columns.Add("quantity", "value", "95 % interval", "within", "between", "groups");
        foreach (ClassQuantity quantity in result.Quantities)
        {
            int decimals = Figures.DecimalsFor(quantity.StandardUncertainty);
            columns.Add(
                HeadingOf(quantity.Quantity),
                quantity.Text,
                $"{Figures.Text(quantity.Interval.Low, decimals)} to {Figures.Text(quantity.Interval.High, decimals)}",
                Figures.Text(quantity.Within, Figures.DecimalsFor(quantity.Within)),
                Figures.Text(quantity.Between, Figures.DecimalsFor(quantity.Between)),
                quantity.Count.ToString(CultureInfo.InvariantCulture));
        }

        columns.Write(output);
    }

    private static void WriteTable(TextWriter output, ClassFindings findings)
    {
        ClassReadings readings = findings.Readings;
        WrappedText.Heading(output, "How the table was read");
        var columns = new Columns("lll");
        ColumnMatch[] points = [.. readings.Columns.Where(c => c.Meaning is ColumnMeaning.Point)];
        foreach (ColumnMatch column in readings.Columns.Where(c => c.Meaning is not ColumnMeaning.Point || c == points[0]))
        {
            if (column.Meaning is ColumnMeaning.Point)
            {
                string letters = points.Length == 1 ? column.ColumnLetter : $"{column.ColumnLetter} ... {points[^1].ColumnLetter}";
                columns.Add(letters, column.Heading + (points.Length == 1 ? "" : " ..."), "taken as mass against time");
                continue;
            }

            columns.Add(
                column.ColumnLetter,
                column.Heading.Length == 0 ? "(no heading)" : column.Heading,
                column.Meaning is ColumnMeaning.Ignored ignored ? $"not used: {ignored.Reason}" : $"taken as {MeaningOf(findings.Practical, column.Meaning)}");
        }

        columns.Write(output);
        string change = readings.Balance.RepeatabilityOrigin == BalanceOrigin.Given ? string.Empty : " Give --repeatability if you know better.";
        WrappedText.Write(output, readings.Balance.SentenceIn(EngineLanguage.British) + change, first: "  ", then: "    ");
        foreach (RejectedCell cell in readings.Rejected)
        {
            WrappedText.Write(output, $"Not used, {cell.Cell}: '{cell.Text}': {cell.Reason}.", first: "  ", then: "    ");
        }

        foreach (string note in readings.Notes.Select(n => n.ToString()).Concat(
            findings.Groups.SelectMany(g => g.Contradictions.Select(c => $"{g.Name}: {c}"))))
        {
            WrappedText.Write(output, note, first: "  Note: ", then: "    ");
        }
    }

    private static string MeaningOf(Practical practical, ColumnMeaning meaning) => meaning switch
    {
        ColumnMeaning.Reading reading when reading.Occurrence > 1 =>
            $"{practical.Reading(reading.BaseId).RepeatLabel ?? practical.Reading(reading.BaseId).Label} ({reading.Word})",
        ColumnMeaning.Reading reading => $"{practical.Reading(reading.BaseId).Label} ({reading.Word})",
        ColumnMeaning.ReadyMade ready => $"{practical.FindColumn(ready.ColumnId)?.Label ?? ready.ColumnId} ({ready.Word})",
        _ => meaning.Word,
    };

    /// <summary>What fits on a terminal: the sample, the change and the key quantity, as far as some group has them.</summary>
    private static IEnumerable<QuantityDefinition> ShownQuantities(ClassFindings findings)
    {
        FindingsDefinition asked = findings.Practical.Findings;
        string[] ids = [asked.Sample, asked.Change, asked.Key];
        return findings.Practical.Quantities.Where(q => ids.Contains(q.Id) && findings.Groups.Any(g => g.Find(q.Id) is not null));
    }

    private static string HeadingOf(QuantityDefinition quantity) =>
        quantity.Unit == "1" ? quantity.Label : $"{quantity.Label} / {quantity.Unit}";
}
