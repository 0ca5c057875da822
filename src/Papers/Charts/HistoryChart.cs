using Calx.Measurement.Numbers;
using Calx.Measurement.Statistics;
using Calx.Papers.Reports;
using Calx.Papers.Texts;
using Calx.Practicals.Definition;
using Calx.Practicals.Findings.History;

namespace Calx.Papers.Charts;

/// <summary>What the classes of several years found in one practical: a row a lesson, with its 95 % interval, all lessons
/// together as a band, and the accepted value where it is shown.</summary>
public static class HistoryChart
{
    private const double Width = 620;
    private const double RowHeight = 25;
    private const double MostForNames = 190;

    /// <summary>More lessons than this make a wall of ink: the last ones are drawn.</summary>
    private const int MostLessons = 40;

    /// <summary>Fewer lessons than this have no band.</summary>
    private const int FewestPooled = 3;

    /// <summary>Draws it, or returns null where no lesson has given a value.</summary>
    /// <param name="history">The lessons.</param>
    /// <param name="view">For whom; null for the teacher.</param>
    /// <param name="id">Unique on the page, where it has several.</param>
    public static Chart? Of(ResultHistory history, ReportView? view = null, string id = "history-chart")
    {
        ArgumentNullException.ThrowIfNull(history);
        return history.Lessons.Count == 0 ? null : new Drawing(history, view ?? ReportView.Teacher, id).Draw();
    }

    private sealed class Drawing(ResultHistory history, ReportView view, string id)
    {
        private readonly ChartTexts texts = new(view.Language);
        private readonly LessonResult[] lessons = [.. history.Lessons.TakeLast(MostLessons)];
        private readonly double? accepted = view.Accepted ? history.Accepted : null;
        private readonly PooledResult? pooled = history.Lessons.Count < FewestPooled ? null : history.Pooled;

        public Chart Draw()
        {
            QuantityDefinition quantity = history.Quantity;
            string heading = texts.LessonByLesson(Text.Capital(quantity.Label));
            double top = accepted is null && pooled is null ? 12 : 56;
            double height = top + 8 + (RowHeight * lessons.Length) + 58;
            var picture = new SvgPicture(id, Width, height, heading, Description());
            double left = Math.Min(MostForNames, 14 + lessons.Max(l => TextWidth.Of(l.Label)));
            var frame = new Frame(picture, left, top, Width - 24, height - 58);
            IEnumerable<double> ends = lessons.SelectMany(l => new[] { l.Interval.Low, l.Interval.High });
            var across = new Axis(accepted is double value ? ends.Append(value) : ends, frame.Left, frame.Right);
            Band(picture, frame, across);
            frame.Across(across, Shown.Axis(quantity, texts));
            AcceptedLine(picture, frame, across);
            for (int i = 0; i < lessons.Length; i++)
            {
                double y = frame.Top + (RowHeight * (i + 0.5));
                picture.Text(frame.Left - 10, y + 5, TextWidth.Cut(lessons[i].Label, MostForNames - 14), "label", "end");
                picture.Line(across.At(lessons[i].Interval.Low), y, across.At(lessons[i].Interval.High), y, "spread");
                picture.Circle(across.At(lessons[i].Value), y, 4.5, "dot");
            }

            string cut = lessons.Length < history.Lessons.Count
                ? $" {texts.LastLessons(Shown.InDigits(lessons.Length), Shown.InDigits(history.Lessons.Count))}" : string.Empty;
            return new Chart(heading, picture, $"{(pooled is null ? texts.IntervalsWithoutBand : texts.Intervals)}{cut}");
        }

        private void Band(SvgPicture picture, Frame frame, Axis across)
        {
            if (pooled is null)
            {
                return;
            }

            double from = across.At(Math.Clamp(pooled.Interval.Low, across.Low, across.High));
            double to = across.At(Math.Clamp(pooled.Interval.High, across.Low, across.High));
            picture.Rectangle(from, frame.Top, to - from, frame.Bottom - frame.Top, "band");
            string text = texts.AllLessonsMark(Figures.WithUncertainty(pooled.Value, pooled.StandardUncertainty));
            picture.Text(Place((from + to) / 2, text, frame), frame.Top - (accepted is null ? 12 : 34), text, "mark-label", "middle");
        }

        private void AcceptedLine(SvgPicture picture, Frame frame, Axis across)
        {
            if (accepted is not double value)
            {
                return;
            }

            picture.Line(across.At(value), frame.Top - 6, across.At(value), frame.Bottom, "theory");
            string text = texts.AcceptedMark(Shown.Accepted(value));
            picture.Text(Place(across.At(value), text, frame), frame.Top - 12, text, "theory-label", "middle");
        }

        /// <summary>Over what it names, but within the frame.</summary>
        private static double Place(double middle, string text, Frame frame)
        {
            double half = TextWidth.Of(text) / 2;
            return Math.Clamp(middle, frame.Left + half, Math.Max(frame.Left + half, frame.Right - half));
        }

        private string Description()
        {
            IEnumerable<string> values = lessons.Select(l => $"{l.Label} {Figures.WithUncertainty(l.Value, l.StandardUncertainty)}");
            string all = pooled is null ? string.Empty : $" {texts.AllLessons(Figures.WithUncertainty(pooled.Value, pooled.StandardUncertainty))}";
            return $"{string.Join("; ", values)}.{all}";
        }
    }
}
