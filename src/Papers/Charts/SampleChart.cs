using Calx.Measurement.Numbers;
using Calx.Papers.Reports;
using Calx.Papers.Texts;
using Calx.Practicals.Definition;
using Calx.Practicals.Findings;
using Calx.Practicals.Inference;

namespace Calx.Papers.Charts;

/// <summary>The change of mass against the mass of the sample, with the line that the equation gives.</summary>
public static class SampleChart
{
    private const double MostForName = 170;

    /// <summary>Draws it, or returns null where no group gives both masses, or the two are one.</summary>
    /// <param name="findings">What the class's readings show.</param>
    /// <param name="view">For whom; null for the teacher.</param>
    public static Chart? Of(ClassFindings findings, ReportView? view = null) => Of(findings, view, ChartSize.Whole);

    /// <summary>The same of a size.</summary>
    internal static Chart? Of(ClassFindings findings, ReportView? view, ChartSize size)
    {
        ArgumentNullException.ThrowIfNull(findings);
        FindingsDefinition asked = findings.Practical.Findings;
        Point[] points = [.. findings.Groups.Select(g => Point.Of(g, asked)).OfType<Point>()];
        // Where the change is the sample itself, as with fuel that burns away, all points lie on one line whatever was found.
        return points.All(p => Math.Abs(Math.Abs(p.X.Value) - Math.Abs(p.Y.Value)) < 1e-9) ? null : new Drawing(findings, points, view ?? ReportView.Teacher, size).Draw();
    }

    private sealed record Point(GroupFindings Group, QuantityEstimate X, QuantityEstimate Y)
    {
        public static Point? Of(GroupFindings group, FindingsDefinition asked) =>
            group.Find(asked.Sample) is QuantityEstimate x && group.Find(asked.Change) is QuantityEstimate y
                ? new Point(group, x, y) : null;
    }

    private sealed class Drawing(ClassFindings findings, Point[] points, ReportView view, ChartSize size)
    {
        private readonly ProductLine.Fitted? line = findings.Class.Line as ProductLine.Fitted;
        private readonly ChartTexts texts = new(view.Language);
        private readonly GroupNames names = GroupNames.Of(findings, view);

        public Chart Draw()
        {
            Point[] sound = [.. points.Where(p => !p.Group.IsAnomalous)];
            Point[] core = sound.Length > 0 ? sound : points;
            QuantityDefinition x = core[0].X.Quantity;
            QuantityDefinition y = core[0].Y.Quantity;
            (double lowX, double highX) = Widened(core.SelectMany(p => Ends(p.X)));
            double[] origin = Origin([.. core.SelectMany(p => Ends(p.Y))]);
            (double lowY, double highY) = Widened(core.SelectMany(p => Ends(p.Y)).Concat(origin));
            Point[] inside = [.. points.Where(p => p.X.Value >= lowX && p.X.Value <= highX && p.Y.Value >= lowY && p.Y.Value <= highY)];
            IReadOnlyList<Point> drawn = Shown.Thinned(inside);
            string[] off = [.. points.Except(inside).Select(p => texts.OffScalePoint(names[p.Group], p.X.Quantity.Label, p.X.Text, p.Y.Quantity.Label, p.Y.Text))];
            string heading = texts.Against(Text.Capital(y.Label), x.Label);
            var picture = new SvgPicture("sample-chart", size.Width, size.Height, heading, Description(drawn.Count, y));
            var frame = new Frame(picture, 62, 44, size.Width - 116, size.Height - size.BelowFrame);
            var across = new Axis(drawn.SelectMany(p => Ends(p.X)), frame.Left, frame.Right);
            var upwards = new Axis(drawn.SelectMany(p => Ends(p.Y)).Concat(origin), frame.Bottom, frame.Top);
            frame.Across(across, texts.QuantityUnit(x.Label, x.Unit));
            frame.Upwards(upwards, texts.QuantityUnit(y.Label, y.Unit));
            Lines(picture, frame, across, upwards);
            double[] aside = Dodge.Aside([.. drawn.Select(p => (across.At(p.X.Value), upwards.At(p.Y.Value)))], frame.Left, frame.Right);
            for (int i = 0; i < drawn.Count; i++)
            {
                Mark(picture, drawn[i], across, upwards, aside[i]);
            }

            NameOdd(picture, frame, [.. drawn.Where(IsOdd)], across, upwards);
            string beside = aside.Any(a => a != 0) ? texts.SideBySide : string.Empty;
            string caption = $"{beside} {Shown.Caption(off, drawn.Count, inside.Length, texts)}".Trim();
            return new Chart(heading, picture, caption);
        }

        private void Lines(SvgPicture picture, Frame frame, Axis across, Axis upwards)
        {
            if (line is null)
            {
                return;
            }

            double fitEnd = Ray(picture, line.ThroughOrigin.LineWithScatter.Slope, across, upwards, "fit");
            if (!view.Accepted)
            {
                picture.Text(frame.Right + 8, Math.Clamp(fitEnd, frame.Top + 10, frame.Bottom) + 5, texts.ThisClass, "mark-label");
                return;
            }

            double theoryEnd = Ray(picture, line.TheorySlope, across, upwards, "theory");
            double[] places = LabelColumn.Spread([theoryEnd, fitEnd], 20, frame.Top + 10, frame.Bottom);
            picture.Text(frame.Right + 8, places[0] + 5, texts.TheEquation, "theory-label");
            picture.Text(frame.Right + 8, places[1] + 5, texts.ThisClass, "mark-label");
        }

        /// <summary>A line through the origin from end to end of the plot; returns where it leaves on the right.</summary>
        private static double Ray(SvgPicture picture, double slope, Axis across, Axis upwards, string role)
        {
            double Clamped(double y) => Math.Clamp(y, upwards.Low, upwards.High);
            double left = Clamped(slope * across.Low);
            double right = Clamped(slope * across.High);
            picture.Line(across.At(left / slope), upwards.At(left), across.At(right / slope), upwards.At(right), role);
            return upwards.At(right);
        }

        private void Mark(SvgPicture picture, Point point, Axis across, Axis upwards, double aside)
        {
            double x = across.At(point.X.Value) + aside;
            double y = upwards.At(point.Y.Value);
            bool odd = IsOdd(point);
            string role = odd ? "odd-spread" : "spread";
            picture.Line(across.At(point.X.Value - point.X.StandardUncertainty) + aside, y, across.At(point.X.Value + point.X.StandardUncertainty) + aside, y, role);
            picture.Line(x, upwards.At(point.Y.Value - point.Y.StandardUncertainty), x, upwards.At(point.Y.Value + point.Y.StandardUncertainty), role);
            if (odd)
            {
                picture.Diamond(x, y, 7, "odd-dot");
            }
            else
            {
                picture.Circle(x, y, 4.5, "dot");
            }
        }

        /// <summary>Names to the right of their points, moved apart where points lie close.</summary>
        private void NameOdd(SvgPicture picture, Frame frame, Point[] odd, Axis across, Axis upwards)
        {
            double[] places = LabelColumn.Spread([.. odd.Select(p => upwards.At(p.Y.Value))], 18, frame.Top + 10, frame.Bottom - 8);
            for (int i = 0; i < odd.Length; i++)
            {
                double x = across.At(odd[i].X.Value + odd[i].X.StandardUncertainty) + 6;
                string name = TextWidth.Cut(names[odd[i].Group], MostForName);
                bool fits = x + TextWidth.Of(name) < frame.Right;
                double left = across.At(odd[i].X.Value - odd[i].X.StandardUncertainty) - 6;
                picture.Text(fits ? x : left, places[i] + 5, name, "odd-label", fits ? "start" : "end");
            }
        }

        private bool IsOdd(Point point) => view.Causes && point.Group.IsAnomalous;

        private string Description(int drawn, QuantityDefinition y)
        {
            string said = texts.AgainstDescription(Shown.InDigits(drawn), y.Label);
            if (line is null)
            {
                return said;
            }

            string slope = Figures.WithUncertainty(line.ThroughOrigin.LineWithScatter.Slope, line.ThroughOrigin.LineWithScatter.SlopeStandardUncertainty);
            return $"{said} {(view.Accepted ? texts.EquationAndClassSlope(Figures.Text(line.TheorySlope, 3), slope) : texts.ClassSlope(slope))}";
        }

        private static IEnumerable<double> Ends(QuantityEstimate estimate) =>
            [estimate.Value - estimate.StandardUncertainty, estimate.Value + estimate.StandardUncertainty];

        /// <summary>No change is on the axis unless it lies so far from the class that it would squash it.</summary>
        private static double[] Origin(double[] ends)
        {
            double away = ends.Min(Math.Abs);
            return away <= 4 * (ends.Max() - ends.Min()) ? [0] : [];
        }

        /// <summary>The core's span with as much again on either side: farther out is off the scale.</summary>
        private static (double Low, double High) Widened(IEnumerable<double> values)
        {
            double low = values.Min();
            double high = values.Max();
            return (low - (high - low), high + (high - low));
        }
    }
}
