using Calx.Measurement.Statistics.Series;
using Calx.Papers.Reports;
using Calx.Papers.Texts;
using Calx.Practicals.Definition;
using Calx.Practicals.Findings;
using Calx.Practicals.Inference;

namespace Calx.Papers.Charts;

/// <summary>The mass that each group's flask lost against time: points, and the curve through them.</summary>
public static class SeriesChart
{
    private const int CurveSteps = 60;
    private const double MostForName = 120;

    /// <summary>Draws it, or returns null where no group has points with a curve.</summary>
    /// <param name="findings">What the class's readings show.</param>
    /// <param name="view">For whom; null for the teacher.</param>
    public static Chart? Of(ClassFindings findings, ReportView? view = null) => Of(findings, view, ChartSize.Whole);

    /// <summary>The same of a size.</summary>
    internal static Chart? Of(ClassFindings findings, ReportView? view, ChartSize size)
    {
        ArgumentNullException.ThrowIfNull(findings);
        GroupFindings[] groups = [.. findings.Groups.Where(g => g.Curve is { Fit: not null, Series: not null })];
        return findings.Practical.Series is not SeriesDefinition series || groups.Length == 0
            ? null
            : new Drawing(findings, series, groups, view ?? ReportView.Teacher, size).Draw();
    }

    private sealed class Drawing(ClassFindings findings, SeriesDefinition series, GroupFindings[] groups, ReportView view, ChartSize size)
    {
        private readonly ChartTexts texts = new(view.Language);
        private readonly GroupNames names = GroupNames.Of(findings, view);

        public Chart Draw()
        {
            string heading = texts.LostAgainstTime;
            IReadOnlyList<GroupFindings> drawn = Shown.Thinned(groups);
            string described = texts.LostDescription(Shown.InDigits(drawn.Count), findings.Class.Curve?.OrderSentence ?? string.Empty);
            var picture = new SvgPicture("series-chart", size.Width, size.Height, heading, described);
            var frame = new Frame(picture, 62, 44, size.Width - 24, size.Height - size.BelowFrame);
            double longest = drawn.Max(g => g.Curve!.Series!.Times[^1]);
            double most = drawn.Max(g => Math.Max(g.Curve!.Fit!.Loss.Estimate, 0));
            var across = new Axis([0, longest], frame.Left, frame.Right);
            var upwards = new Axis([0, most * 1.02], frame.Bottom, frame.Top);
            frame.Across(across, texts.QuantityUnit(texts.Time, series.TimeUnit));
            frame.Upwards(upwards, texts.QuantityUnit(texts.MassLost, "g"));
            int off = drawn.OrderBy(IsOdd).Sum(group => Group(picture, group, across, upwards));
            NameOdd(picture, frame, [.. drawn.Where(IsOdd)], across, upwards, longest);
            string away = off == 0 ? string.Empty : off == 1 ? texts.OnePointOff : texts.PointsOff(Shown.InDigits(off));
            int without = findings.Groups.Count - groups.Length;
            string missing = without == 0 ? string.Empty : without == 1 ? texts.OneWithoutCurve : texts.WithoutCurve(Shown.InDigits(without));
            return new Chart(heading, picture, string.Join(' ', new[] { texts.LostCaption, away, missing }.Where(s => s.Length > 0)));
        }

        /// <summary>Points as dots, the curve as a line; how many points are off the scale.</summary>
        private int Group(SvgPicture picture, GroupFindings group, Axis across, Axis upwards)
        {
            TimeSeries points = group.Curve!.Series!;
            FittedCurve curve = group.Curve.Fit!;
            double start = curve.Start.Estimate;
            double end = points.Times[^1];
            bool odd = IsOdd(group);
            picture.Path(
                [.. Enumerable.Range(0, CurveSteps + 1).Select(i => i * end / CurveSteps)
                    .Select(t => (across.At(t), upwards.At(Math.Clamp(start - curve.At(t), upwards.Low, upwards.High))))],
                odd ? "odd-path" : "path");
            int off = 0;
            for (int i = 0; i < points.Times.Length; i++)
            {
                double lost = start - points.Values[i];
                if (lost < upwards.Low - (0.03 * (upwards.High - upwards.Low)) || lost > upwards.High)
                {
                    off++;
                    continue;
                }

                (double x, double y) = (across.At(points.Times[i]), upwards.At(lost));
                if (odd)
                {
                    picture.Diamond(x, y, 4, "odd-dot");
                }
                else
                {
                    picture.Circle(x, y, 2.4, "dot");
                }
            }

            return off;
        }

        private void NameOdd(SvgPicture picture, Frame frame, GroupFindings[] odd, Axis across, Axis upwards, double longest)
        {
            double at = longest * 0.97;
            double[] places = LabelColumn.Spread(
                [.. odd.Select(g => upwards.At(Math.Clamp(g.Curve!.Fit!.Start.Estimate - g.Curve.Fit.At(at), upwards.Low, upwards.High)) - 12)], 18, frame.Top + 10, frame.Bottom - 8);
            for (int i = 0; i < odd.Length; i++)
            {
                picture.Text(across.At(at), places[i], TextWidth.Cut(names[odd[i]], MostForName), "odd-label", "end");
            }
        }

        private bool IsOdd(GroupFindings group) => view.Causes && group.IsAnomalous;
    }
}
