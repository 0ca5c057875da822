using Calx.Measurement.Numbers;
using Calx.Measurement.Uncertainty;
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
    public static Chart? Of(ClassFindings findings)
    {
        ArgumentNullException.ThrowIfNull(findings);
        string key = findings.Practical.Findings.Key;
        Row[] all = [.. findings.Groups.Select(g => (Group: g, Estimate: g.Find(key)))
            .Where(r => r.Estimate is not null).Select(r => new Row(r.Group, r.Estimate!)).OrderBy(r => r.Estimate.Value)];
        return all.Length == 0 ? null : new Drawing(findings, Shown.Thinned(all), all.Length).Draw();
    }

    private sealed record Row(GroupFindings Group, QuantityEstimate Estimate);

    private sealed class Drawing(ClassFindings findings, IReadOnlyList<Row> rows, int all)
    {
        private readonly AcceptedResult.Compared? accepted = findings.Class.Accepted as AcceptedResult.Compared;
        private readonly QuantityDefinition quantity = rows[0].Estimate.Quantity;

        public Chart Draw()
        {
            double top = accepted is null && findings.Class.Find(quantity.Id) is null ? 12 : 56; // room for the two labels
            double height = top + 8 + (RowHeight * rows.Count) + 58;
            var picture = new SvgPicture("ratio-chart", Width, height, $"{Capital(quantity.Label)}, group by group", Description());
            double left = Math.Min(MostForNames, 14 + rows.Max(r => TextWidth.Of(r.Group.Name)));
            var frame = new Frame(picture, left, top, Width - 24, height - 58);
            var across = new Axis(Span(), frame.Left, frame.Right);
            ClassBand(picture, frame, across);
            frame.Across(across, quantity.Unit == "1" ? quantity.Label : $"{quantity.Label} / {quantity.Unit}");
            AcceptedLine(picture, frame, across);
            for (int i = 0; i < rows.Count; i++)
            {
                DrawRow(picture, frame, across, rows[i], frame.Top + (RowHeight * (i + 0.5)));
            }

            return new Chart($"{Capital(quantity.Label)}, group by group", picture, $"Lines and band are 95 % intervals. {Shown.Caption([], rows.Count, all)}".TrimEnd());
        }

        /// <summary>The groups without an odd result decide the scale, with as much again on either side for the others: one
        /// gross result does not squash the rest.</summary>
        private double[] Span()
        {
            IReadOnlyList<GroupFindings> core = Shown.Core([.. rows.Select(r => r.Group)]);
            var values = core.Select(g => g.Find(quantity.Id)!).SelectMany(Ends).ToList();
            if (accepted is not null)
            {
                values.Add(accepted.Accepted);
            }

            double low = values.Min();
            double high = values.Max();
            double span = high - low;
            return [.. values, .. rows.Select(r => r.Estimate.Value).Where(v => v >= low - span && v <= high + span)];
        }

        private static IEnumerable<double> Ends(QuantityEstimate estimate) =>
        [
            estimate.Interval?.Low ?? estimate.Value - estimate.StandardUncertainty,
            estimate.Interval?.High ?? estimate.Value + estimate.StandardUncertainty,
        ];

        private void ClassBand(SvgPicture picture, Frame frame, Axis across)
        {
            if (findings.Class.Find(quantity.Id) is not ClassQuantity pooled)
            {
                return;
            }

            double from = across.At(Math.Clamp(pooled.Interval.Low, across.Low, across.High));
            double to = across.At(Math.Clamp(pooled.Interval.High, across.Low, across.High));
            picture.Rectangle(from, frame.Top, to - from, frame.Bottom - frame.Top, "band");
            picture.Text((from + to) / 2, frame.Top - 34, $"class {pooled.Text}", "mark-label", Anchor(from, to, frame));
        }

        private void AcceptedLine(SvgPicture picture, Frame frame, Axis across)
        {
            if (accepted is null)
            {
                return;
            }

            double x = across.At(accepted.Accepted);
            picture.Line(x, frame.Top - 6, x, frame.Bottom, "theory");
            picture.Text(x, frame.Top - 12, $"accepted {Shown.Accepted(accepted)}", "theory-label", Anchor(x, x, frame));
        }

        private static string Anchor(double from, double to, Frame frame)
        {
            double middle = (from + to) / 2;
            return middle > frame.Right - 70 ? "end" : middle < frame.Left + 70 ? "start" : "middle";
        }

        private static void DrawRow(SvgPicture picture, Frame frame, Axis across, Row row, double y)
        {
            QuantityEstimate estimate = row.Estimate;
            bool odd = row.Group.IsAnomalous;
            picture.Text(frame.Left - 10, y + 5, TextWidth.Cut(row.Group.Name, MostForNames - 14), odd ? "odd-label" : "label", "end");
            if (estimate.Value < across.Low || estimate.Value > across.High)
            {
                OffScale(picture, frame, y, estimate.Value > across.High, estimate.Text);
                return;
            }

            CoverageInterval ends = estimate.Interval ?? new CoverageInterval(across.Low, across.High, 0.95);
            picture.Line(across.At(Math.Max(ends.Low, across.Low)), y, across.At(Math.Min(ends.High, across.High)), y, odd ? "odd-spread" : "spread");
            if (odd)
            {
                picture.Diamond(across.At(estimate.Value), y, 7, "odd-dot");
            }
            else
            {
                picture.Circle(across.At(estimate.Value), y, 4.5, "dot");
            }
        }

        private static void OffScale(SvgPicture picture, Frame frame, double y, bool above, string text)
        {
            double tip = above ? frame.Right - 4 : frame.Left + 4;
            double back = above ? tip - 11 : tip + 11;
            picture.Polygon([(tip, y), (back, y - 6), (back, y + 6)], "odd-dot");
            picture.Text(above ? back - 8 : back + 8, y + 5, $"off the scale: {text}", "odd-label", above ? "end" : "start");
        }

        private string Description()
        {
            string value = findings.Class.Find(quantity.Id) is ClassQuantity pooled
                ? $" The class's value is {pooled.Text}." : string.Empty;
            string against = accepted is null ? string.Empty : $" The accepted value is {Shown.Accepted(accepted)}.";
            return $"{rows.Count} groups in order of their value, each with its 95 % interval.{value}{against}";
        }
    }

    private static string Capital(string text) => char.ToUpperInvariant(text[0]) + text[1..];
}
