using Calx.Measurement.Numbers;
using Calx.Practicals.Definition;
using Calx.Practicals.Findings;

namespace Calx.App.Output;

/// <summary>Mass against time on the terminal.</summary>
internal static class SeriesText
{
    public static void Write(TextWriter output, ClassFindings findings)
    {
        if (findings.Practical.Series is not SeriesDefinition series || findings.Class.Curve is not ClassCurve pooled)
        {
            return;
        }

        CurveQuantityDefinition[] shown = [.. series.Quantities];
        WrappedText.Heading(output, "Mass against time (value ± standard uncertainty from the curve through the points)");
        var columns = new Columns("l" + new string('r', shown.Length + 1) + "l");
        columns.AddHeading(20, ["group", "points", .. shown.Select(q => $"{q.Label} / {q.Unit}"), "order"]);
        foreach (GroupFindings group in findings.Groups)
        {
            columns.Add(
            [
                group.Name,
                (group.Readings.Series?.Points.Count ?? 0).ToString(System.Globalization.CultureInfo.InvariantCulture),
                .. shown.Select(q => group.Curve?.Find(q.Id)?.Text ?? "-"),
                CurveLines.OrderOf(group, findings),
            ]);
        }

        columns.Add(["class", "", .. shown.Select(q => pooled.Find(q.Id)?.Text ?? "-"), ""]);
        columns.Write(output);
        foreach (string line in CurveLines.Of(findings))
        {
            WrappedText.Write(output, line, first: "  ", then: "    ");
        }
    }
}
