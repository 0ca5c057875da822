using System.Globalization;
using Calx.Measurement.Numbers;
using Calx.Papers.Reports;
using Calx.Papers.Texts;
using Calx.Practicals.Definition;
using Calx.Practicals.Findings;
using Calx.Practicals.Readings;

namespace Calx.Papers.Charts;

/// <summary>The mass through the steps of heating, group by group, less the mass before heating.</summary>
public static class StepsChart
{
    private const double Width = 620;
    private const double Height = 430;

    /// <summary>With more lines than this only those with an odd result are named.</summary>
    private const int MostNamed = 18;

    /// <summary>Draws it, or returns null where no group weighed before and twice after.</summary>
    /// <param name="findings">What the class's readings show.</param>
    /// <param name="view">For whom; null for the teacher.</param>
    public static Chart? Of(ClassFindings findings, ReportView? view = null)
    {
        ArgumentNullException.ThrowIfNull(findings);
        if (findings.Practical.Findings.ConstantMass is not ConstantMassDefinition rule)
        {
            return null;
        }

        IReadOnlyList<string> pan = findings.Practical.Reading(rule.Reading).Pan.Parts;
        string before = findings.Practical.Readings.TakeWhile(r => r.Id != rule.Reading).LastOrDefault(r => r.Pan.Parts.SequenceEqual(pan))?.Id ?? string.Empty;
        Course[] all = [.. findings.Groups.Select(g => Course.Of(g, before, rule.Reading)).OfType<Course>()];
        return all.All(c => c.Changes.Count < 3) ? null : new Drawing(findings, rule, all, view ?? ReportView.Teacher).Draw();
    }

    /// <summary>One group: 0 before heating, then the change at each weighing after it.</summary>
    private sealed record Course(GroupFindings Group, IReadOnlyList<double> Changes)
    {
        public static Course? Of(GroupFindings group, string before, string after)
        {
            TakenReading? start = group.Readings.LastOf(before);
            double[] later = [.. group.Readings.RepeatsOf(after).Select(r => r.Value.AsDouble)];
            return start is null || later.Length == 0
                ? null : new Course(group, [0, .. later.Select(mass => mass - start.Value.AsDouble)]);
        }
    }

    private sealed class Drawing(ClassFindings findings, ConstantMassDefinition rule, Course[] all, ReportView view)
    {
        private readonly ChartTexts texts = new(view.Language.For(findings.Practical));
        private readonly GroupNames names = GroupNames.Of(findings, view);

        public Chart Draw()
        {
            Course[] sound = [.. all.Where(c => !c.Group.IsAnomalous)];
            double[] core = [.. (sound.Length > 0 ? sound : all).SelectMany(c => c.Changes)];
            double span = core.Max() - core.Min();
            Course[] inside = [.. all.Where(c => c.Changes.All(v => v >= core.Min() - span && v <= core.Max() + span))];
            IReadOnlyList<Course> drawn = Shown.Thinned(inside);
            string[] off = [.. all.Except(inside).Select(c => texts.OffScaleCourse(names[c.Group], Figures.Text(c.Changes[^1], 2)))];
            int steps = all.Max(c => c.Changes.Count);
            var picture = new SvgPicture("steps-chart", Width, Height, texts.StepsHeading, texts.StepsDescription(Shown.InDigits(drawn.Count), Verdicts(drawn)));
            var frame = new Frame(picture, 62, 44, Width - 116, Height - 58);
            var upwards = new Axis(drawn.SelectMany(c => c.Changes), frame.Bottom, frame.Top);
            frame.Upwards(upwards, texts.ChangeAxis);
            double At(int step) => frame.Left + ((frame.Right - frame.Left) * (step + 0.12) / (steps - 1 + 0.24));
            Steps(picture, frame, steps, At);
            foreach (Course course in drawn)
            {
                picture.Path([.. course.Changes.Select((v, i) => (At(i), upwards.At(v)))], IsOdd(course) ? "odd-path" : "path");
            }

            Names(picture, frame, upwards, drawn, At);
            return new Chart(texts.StepsHeading, picture, Shown.Caption(off, drawn.Count, inside.Length, texts));
        }

        private void Steps(SvgPicture picture, Frame frame, int steps, Func<int, double> at)
        {
            string[] names = StepNames(steps);
            for (int step = 0; step < steps; step++)
            {
                picture.Line(at(step), frame.Top, at(step), frame.Bottom, "grid");
                picture.Text(at(step), frame.Bottom + 22, names[step], "tick", "middle");
            }

            picture.Line(frame.Left, frame.Bottom, frame.Right, frame.Bottom, "axis");
        }

        /// <summary>The practical's words, or plain numbers where so many weighings leave no room for words.</summary>
        private string[] StepNames(int steps)
        {
            string[] words = [texts.BeforeHeating, .. Enumerable.Range(1, steps - 1).Select(n => Short(ReadingNames.Of(findings.Practical, rule.Reading, n)))];
            double room = (Width - 178) / (steps - 1 + 0.24);
            return words.Max(w => TextWidth.Of(w, 14)) + 8 <= room
                ? words
                : [texts.Before, .. Enumerable.Range(1, steps - 1).Select(n => texts.After(Shown.InDigits(n)))];
        }

        /// <summary>What the weighings show, in numbers of groups.</summary>
        private static string Verdicts(IReadOnlyList<Course> drawn) => string.Join(", ", drawn
            .Select(c => c.Group.ConstantMass?.Word).OfType<string>()
            .GroupBy(word => word.Replace('-', ' '), StringComparer.Ordinal)
            .OrderByDescending(g => g.Count()).ThenBy(g => g.Key, StringComparer.Ordinal)
            .Select(g => string.Create(CultureInfo.InvariantCulture, $"{g.Key} {g.Count()}")));

        private void Names(SvgPicture picture, Frame frame, Axis upwards, IReadOnlyList<Course> drawn, Func<int, double> at)
        {
            Course[] named = [.. drawn.Where(c => IsOdd(c) || drawn.Count <= MostNamed)];
            double gap = Math.Min(17, (frame.Bottom - frame.Top) / Math.Max(1, named.Length));
            double[] places = LabelColumn.Spread([.. named.Select(c => upwards.At(c.Changes[^1]))], gap, frame.Top, frame.Bottom);
            for (int i = 0; i < named.Length; i++)
            {
                double end = at(named[i].Changes.Count - 1);
                picture.Line(end + 3, upwards.At(named[i].Changes[^1]), frame.Right + 6, places[i], "grid");
                picture.Text(frame.Right + 10, places[i] + 5, TextWidth.Cut(names[named[i].Group], Width - frame.Right - 12), IsOdd(named[i]) ? "odd-label" : "quiet");
            }
        }

        private bool IsOdd(Course course) => view.Causes && course.Group.IsAnomalous;

        private static string Short(string label) =>
            label.StartsWith("Mass ", StringComparison.Ordinal) ? label[5..] : label;
    }
}
