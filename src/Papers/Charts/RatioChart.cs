using Calx.Papers.Reports;
using Calx.Papers.Texts;
using Calx.Practicals.Definition;
using Calx.Practicals.Findings;
using Calx.Practicals.Inference;

namespace Calx.Papers.Charts;

/// <summary>The key quantity group by group with its 95 % interval, the accepted value and the class's interval.</summary>
public static class RatioChart
{
    /// <summary>Draws it, or returns null where no group gives the key quantity.</summary>
    /// <param name="findings">What the class's readings show.</param>
    /// <param name="view">For whom; null for the teacher.</param>
    public static Chart? Of(ClassFindings findings, ReportView? view = null) => Of(findings, view, ChartSize.Whole);

    /// <summary>The same of a size.</summary>
    internal static Chart? Of(ClassFindings findings, ReportView? view, ChartSize size)
    {
        ArgumentNullException.ThrowIfNull(findings);
        string key = findings.Practical.Findings.Key;
        (GroupFindings, QuantityEstimate)[] all = [.. findings.Groups.Select(g => (Group: g, Estimate: g.Find(key)))
            .Where(r => r.Estimate is not null).Select(r => (r.Group, r.Estimate!)).OrderBy(r => r.Item2.Value)];
        return all.Length == 0 ? null : new Drawing(findings, Shown.Thinned(all), all.Length, view ?? ReportView.Teacher, size).Draw();
    }

    private sealed class Drawing(
        ClassFindings findings, IReadOnlyList<(GroupFindings Group, QuantityEstimate Estimate)> rows, int all, ReportView view, ChartSize size)
    {
        private readonly GroupNames names = GroupNames.Of(findings, view);
        private readonly QuantityDefinition quantity = rows[0].Estimate.Quantity;
        private readonly ChartTexts texts = new(view.Language);
        private readonly GroupMarks marks = new(findings, rows[0].Estimate.Quantity, view);

        public Chart Draw()
        {
            double top = marks.HasLabels ? 56 : 12;
            double height = top + 8 + (size.RowHeight * rows.Count) + size.BelowFrame;
            string heading = texts.GroupByGroup(Text.Capital(quantity.Label));
            var picture = new SvgPicture("ratio-chart", size.Width, height, heading, Description());
            double left = Math.Min(size.MostForNames, 14 + rows.Max(r => TextWidth.Of(names[r.Group])));
            var frame = new Frame(picture, left, top, size.Width - 24, height - size.BelowFrame);
            var across = new Axis(marks.Span(rows), frame.Left, frame.Right);
            marks.Band(picture, frame, across);
            frame.Across(across, Shown.Axis(quantity, texts));
            marks.AcceptedLine(picture, frame, across);
            for (int i = 0; i < rows.Count; i++)
            {
                double y = frame.Top + (size.RowHeight * (i + 0.5));
                string name = TextWidth.Cut(names[rows[i].Group], size.MostForNames - 14);
                picture.Text(frame.Left - 10, y + 5, name, marks.IsOdd(rows[i].Group) ? "odd-label" : "label", "end");
                marks.Value(picture, frame, across, rows[i], y);
            }

            string caption = string.Join(' ', new[] { texts.Intervals, marks.CutCaption(rows, across), Shown.Caption([], rows.Count, all, texts) }.Where(t => t.Length > 0));
            return new Chart(heading, picture, caption);
        }

        private string Description()
        {
            string[] sentences =
            [
                texts.GroupByGroupDescription(Shown.InDigits(rows.Count)),
                .. marks.Pooled is ClassQuantity pooled ? [texts.ClassValue(pooled.Text)] : (string[])[],
                .. marks.Accepted is string accepted ? [texts.AcceptedValue(accepted)] : (string[])[],
            ];
            return string.Join(' ', sentences);
        }
    }
}
