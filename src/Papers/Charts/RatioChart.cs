using Calx.Papers.Reports;
using Calx.Practicals.Definition;
using Calx.Practicals.Findings;
using Calx.Practicals.Inference;

namespace Calx.Papers.Charts;

/// <summary>The key quantity group by group with its 95 % interval, the accepted value and the class's interval.</summary>
public static class RatioChart
{
    private const double Width = 620;
    private const double RowHeight = 25;
    private const double MostForNames = 190;

    /// <summary>Draws it, or returns null where no group gives the key quantity.</summary>
    /// <param name="findings">What the class's readings show.</param>
    /// <param name="view">For whom; null for the teacher.</param>
    public static Chart? Of(ClassFindings findings, ReportView? view = null)
    {
        ArgumentNullException.ThrowIfNull(findings);
        string key = findings.Practical.Findings.Key;
        (GroupFindings, QuantityEstimate)[] all = [.. findings.Groups.Select(g => (Group: g, Estimate: g.Find(key)))
            .Where(r => r.Estimate is not null).Select(r => (r.Group, r.Estimate!)).OrderBy(r => r.Item2.Value)];
        return all.Length == 0 ? null : new Drawing(findings, Shown.Thinned(all), all.Length, view ?? ReportView.Teacher).Draw();
    }

    private sealed class Drawing(
        ClassFindings findings, IReadOnlyList<(GroupFindings Group, QuantityEstimate Estimate)> rows, int all, ReportView view)
    {
        private readonly GroupNames names = GroupNames.Of(findings, view);
        private readonly QuantityDefinition quantity = rows[0].Estimate.Quantity;
        private readonly GroupMarks marks = new(findings, rows[0].Estimate.Quantity, view);

        public Chart Draw()
        {
            double top = marks.HasLabels ? 56 : 12;
            double height = top + 8 + (RowHeight * rows.Count) + 58;
            var picture = new SvgPicture("ratio-chart", Width, height, $"{Text.Capital(quantity.Label)}, group by group", Description());
            double left = Math.Min(MostForNames, 14 + rows.Max(r => TextWidth.Of(names[r.Group])));
            var frame = new Frame(picture, left, top, Width - 24, height - 58);
            var across = new Axis(marks.Span(rows), frame.Left, frame.Right);
            marks.Band(picture, frame, across);
            frame.Across(across, quantity.Unit == "1" ? quantity.Label : $"{quantity.Label} / {quantity.Unit}");
            marks.AcceptedLine(picture, frame, across);
            for (int i = 0; i < rows.Count; i++)
            {
                double y = frame.Top + (RowHeight * (i + 0.5));
                string name = TextWidth.Cut(names[rows[i].Group], MostForNames - 14);
                picture.Text(frame.Left - 10, y + 5, name, marks.IsOdd(rows[i].Group) ? "odd-label" : "label", "end");
                marks.Value(picture, frame, across, rows[i], y);
            }

            string caption = string.Join(' ', new[] { "Lines and band are 95 % intervals.", GroupMarks.CutCaption(rows, across), Shown.Caption([], rows.Count, all) }.Where(t => t.Length > 0));
            return new Chart($"{Text.Capital(quantity.Label)}, group by group", picture, caption);
        }

        private string Description()
        {
            string value = marks.Pooled is ClassQuantity pooled ? $" The class's value is {pooled.Text}." : string.Empty;
            string against = marks.Accepted is string accepted ? $" The accepted value is {accepted}." : string.Empty;
            return $"{rows.Count} groups in order of their value, each with its 95 % interval.{value}{against}";
        }
    }
}
