using System.Globalization;
using Calx.Papers.Texts;
using Calx.Practicals.Clock;

namespace Calx.Papers.Charts;

/// <summary>What each group does when in one simulated lesson, a row for a group: flames, weighings, cooling, work and
/// waiting, the minutes that the teacher calls out, and the chain of steps on which the end depends.</summary>
public static class TimelineChart
{
    /// <summary>The lesson that half of all are worse than.</summary>
    /// <param name="lesson">The lesson.</param>
    /// <param name="language">The language of its own texts; null for British English.</param>
    public static Chart Typical(LessonForecast lesson, PaperLanguage? language = null)
    {
        ArgumentNullException.ThrowIfNull(lesson);
        ChartTexts texts = new(language ?? PaperLanguage.BritishEnglish);
        return new Drawing(lesson, lesson.Typical, "timeline-typical", texts).Draw(texts.TypicalLesson, texts.TypicalRank);
    }

    /// <summary>The lesson that one in twenty is worse than.</summary>
    /// <param name="lesson">The lesson.</param>
    /// <param name="language">The language of its own texts; null for British English.</param>
    public static Chart Bad(LessonForecast lesson, PaperLanguage? language = null)
    {
        ArgumentNullException.ThrowIfNull(lesson);
        ChartTexts texts = new(language ?? PaperLanguage.BritishEnglish);
        return new Drawing(lesson, lesson.Bad, "timeline-bad", texts).Draw(texts.BadLesson, texts.BadRank);
    }

    private sealed class Drawing(LessonForecast lesson, LessonTimeline timeline, string id, ChartTexts texts)
    {
        private readonly TimelineLayout layout = new(timeline, lesson.Settings.Minutes);

        public Chart Draw(Func<string, string> named, string rank)
        {
            var calls = TimelineCalls.Of(lesson, layout.Axis, texts);
            string heading = named(MinuteAxis.TextOf(timeline.EndMinute));
            var picture = new SvgPicture(id, TimelineLayout.Width, layout.Bottom + calls.Height, heading, Description());
            TimelineBars.DrawBands(picture, layout, timeline, texts);
            DrawAxis(picture);
            foreach (TimelineBar bar in timeline.Bars.Where(b => b.Group > 0 && b.Kind != BarKind.Class))
            {
                TimelineBars.Draw(picture, layout, bar, texts);
            }

            calls.DrawLines(picture, layout.Top, layout.Bottom);
            DrawCriticalPath(picture);
            foreach (TimelineBar bar in timeline.Bars.Where(b => b.Group > 0 && b.Kind == BarKind.Waiting))
            {
                TimelineBars.WriteWait(picture, layout, bar, texts);
            }

            layout.Names.Draw(picture, layout.RowTop(layout.Named));
            WriteGroups(picture);
            WriteMinutes(picture);
            calls.WriteNames(picture, layout.Bottom);
            string[] key = [rank, .. KeyOf(BarKind.Flame, texts.TimelineFlames), .. KeyOf(BarKind.Cooling, texts.TimelineCooling), texts.TimelineKey];
            return new Chart(heading, picture, string.Join(' ', key));
        }

        /// <summary>What a shape means, where it stands in the picture.</summary>
        private string[] KeyOf(BarKind kind, string meaning) => timeline.Bars.Any(b => b.Group > 0 && b.Kind == kind) ? [meaning] : [];

        private void DrawAxis(SvgPicture picture)
        {
            foreach (double x in layout.Axis.Ticks.Select(layout.Axis.At))
            {
                picture.Line(x, layout.Top, x, layout.Bottom + 4, "grid");
            }

            picture.Line(TimelineLayout.Left, layout.Bottom, TimelineLayout.Right, layout.Bottom, "axis");
        }

        private void WriteMinutes(SvgPicture picture)
        {
            picture.Text(0, layout.Bottom + 20, texts.MinuteAxis, "tick");
            foreach (double tick in layout.Axis.Ticks)
            {
                picture.Text(layout.Axis.At(tick), layout.Bottom + 20, MinuteAxis.TextOf(tick), "tick", "middle");
            }
        }

        private void WriteGroups(SvgPicture picture)
        {
            for (int group = 1; group <= timeline.Groups; group++)
            {
                string text = group.ToString(CultureInfo.InvariantCulture);
                picture.Text(TimelineLayout.Left - 10, layout.Ground(group) - 1, text, "label", "end");
            }

            picture.Text(0, layout.Top - 7, texts.GroupAxis, "quiet");
        }

        /// <summary>A line under the bars that it runs through, thin where one group waits for another or for somebody late;
        /// what the class does together lies on the row of the group that comes next or was before.</summary>
        private void DrawCriticalPath(SvgPicture picture)
        {
            IReadOnlyList<CriticalStep> steps = timeline.CriticalPath;
            int row = steps.FirstOrDefault(s => s.Group > 0)?.Group ?? 1;
            double before = 0;
            foreach (CriticalStep step in steps)
            {
                double y = layout.Under(step.Group > 0 ? step.Group : row);
                double from = layout.Axis.At(step.FromMinute);
                picture.Path([(layout.Axis.At(before), layout.Under(row)), (from, layout.Under(row)), (from, y)], "hand-over");
                picture.Line(from, y, layout.Axis.At(step.ToMinute), y, "critical");
                (row, before) = (step.Group > 0 ? step.Group : row, step.ToMinute);
            }

            double end = ClearOfBell(layout.Axis.At(timeline.EndMinute) + 8);
            picture.Text(end, layout.Under(row) - 8, texts.ThisLine, "critical-label");
            picture.Text(end, layout.Under(row) + 8, texts.SetsTheEnd, "critical-label");
        }

        /// <summary>Where the words about the end begin: beyond the bell's line where it would go through them.</summary>
        private double ClearOfBell(double end)
        {
            double bell = layout.Axis.At(lesson.Settings.Minutes);
            bool through = bell > end - 6 && bell < end + Math.Max(TextWidth.Of(texts.ThisLine, 15), TextWidth.Of(texts.SetsTheEnd, 15)) + 6;
            return through ? bell + 8 : end;
        }

        private string Description()
        {
            string links = string.Join("; ", timeline.CriticalPath.Select(s => s.Group == 0
                ? texts.LinkOfClass(s.Label, Whole(s.FromMinute), Whole(s.ToMinute))
                : texts.LinkOfGroup(Shown.InDigits(s.Group), s.Label, Whole(s.FromMinute), Whole(s.ToMinute))));
            double late = timeline.EndMinute - lesson.Settings.Minutes;
            (string groups, string minutes) = (Shown.InDigits(timeline.Groups), Whole(Math.Abs(late)));
            return late > 0 ? texts.TimelineAfterBell(groups, minutes, links) : texts.TimelineBeforeBell(groups, minutes, links);
        }

        private static string Whole(double minutes) => minutes.ToString("F0", CultureInfo.InvariantCulture);
    }
}
