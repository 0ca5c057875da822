using System.Globalization;
using Calx.Practicals.Clock;

namespace Calx.Papers.Charts;

/// <summary>What each group does when in one simulated lesson, a row for a group: flames, weighings, cooling, work and
/// waiting, the minutes that the teacher calls out, and the chain of steps on which the end depends.</summary>
public static class TimelineChart
{
    /// <summary>The lesson that half of all are worse than.</summary>
    public static Chart Typical(LessonForecast lesson)
    {
        ArgumentNullException.ThrowIfNull(lesson);
        return new Drawing(lesson, lesson.Typical, "timeline-typical", "A typical lesson", "Half of such lessons end earlier.").Draw();
    }

    /// <summary>The lesson that one in twenty is worse than.</summary>
    public static Chart Bad(LessonForecast lesson)
    {
        ArgumentNullException.ThrowIfNull(lesson);
        return new Drawing(lesson, lesson.Bad, "timeline-bad", "A bad lesson", "One lesson in twenty is worse.").Draw();
    }

    private sealed class Drawing(LessonForecast lesson, LessonTimeline timeline, string id, string name, string rank)
    {
        private readonly TimelineLayout layout = new(timeline, lesson.Settings.Minutes);

        public Chart Draw()
        {
            var calls = TimelineCalls.Of(lesson, layout.Axis);
            string heading = $"{name}: it ends in minute {MinuteAxis.TextOf(timeline.EndMinute)}";
            var picture = new SvgPicture(id, TimelineLayout.Width, layout.Bottom + calls.Height, heading, Description());
            TimelineBars.DrawBands(picture, layout, timeline);
            DrawAxis(picture);
            foreach (TimelineBar bar in timeline.Bars.Where(b => b.Group > 0 && b.Kind != BarKind.Class))
            {
                TimelineBars.Draw(picture, layout, bar);
            }

            calls.DrawLines(picture, layout.Top, layout.Bottom);
            DrawCriticalPath(picture);
            foreach (TimelineBar bar in timeline.Bars.Where(b => b.Group > 0 && b.Kind == BarKind.Waiting))
            {
                TimelineBars.WriteWait(picture, layout, bar);
            }

            layout.Names.Draw(picture, layout.RowTop(layout.Named));
            WriteGroups(picture);
            WriteMinutes(picture);
            calls.WriteNames(picture, layout.Bottom);
            return new Chart(heading, picture, $"{rank} Teeth: a flame burns. Falling wedge: cooling. Tall and dark: weighing. Low bar: other work. Thin line: waiting. The thick line runs through the steps on which the end depends, from group to group.");
        }

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
            picture.Text(0, layout.Bottom + 20, "minute", "tick");
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

            picture.Text(0, layout.Top - 7, "group", "quiet");
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
            picture.Text(end, layout.Under(row) - 8, "this line", "critical-label");
            picture.Text(end, layout.Under(row) + 8, "sets the end", "critical-label");
        }

        /// <summary>Where the words about the end begin: beyond the bell's line where it would go through them.</summary>
        private double ClearOfBell(double end)
        {
            double bell = layout.Axis.At(lesson.Settings.Minutes);
            bool through = bell > end - 6 && bell < end + TextWidth.Of("sets the end", 15) + 6;
            return through ? bell + 8 : end;
        }

        private string Description()
        {
            IEnumerable<string> links = timeline.CriticalPath.Select(s => string.Create(
                CultureInfo.InvariantCulture,
                $"{(s.Group == 0 ? "the class" : $"group {s.Group}")} {s.Label}, minute {s.FromMinute:F0} to {s.ToMinute:F0}"));
            double late = timeline.EndMinute - lesson.Settings.Minutes;
            string bell = late > 0 ? $"{Math.Abs(late):F0} min after the bell" : $"{Math.Abs(late):F0} min before the bell";
            return string.Create(
                CultureInfo.InvariantCulture,
                $"{timeline.Groups} groups, a row each. The lesson ends {bell}. The end depends on: {string.Join("; ", links)}.");
        }
    }
}
