using Calx.Measurement.Numbers;
using Calx.Papers.Reports;
using Calx.Papers.Texts;
using Calx.Practicals.Definition;
using Calx.Practicals.Findings;
using Calx.Practicals.Inference;

namespace Calx.Papers.Charts;

/// <summary>A quantity of a class for a wall: a dot a group over one axis, those with like values on one another, and the class's interval
/// as a band. No group can be told from another.</summary>
public static class DotsChart
{
    /// <summary>344 units are the 178 mm between the margins of A4, so that a letter of 15 is printed at 22 points.</summary>
    private const double Width = 344;
    private const double Side = 12;
    private const double Tick = 20;
    private const double LineOfName = 17;
    private const double LargestRadius = 9;

    /// <summary>Height above the axis where nothing else is said.</summary>
    private const double UsualRoom = 108;

    /// <summary>Letters are large: the ticks stand far apart.</summary>
    private const int FewSteps = 3;

    /// <summary>Draws it, or returns null where no group has the quantity.</summary>
    /// <param name="findings">What the class's readings show.</param>
    /// <param name="quantityId">The quantity.</param>
    /// <param name="accepted">Whether the accepted value is shown.</param>
    /// <param name="room">Height above the axis, of the 344 units that it is wide.</param>
    /// <param name="language">Language of its texts; null for British English.</param>
    public static Chart? Of(ClassFindings findings, string quantityId, bool accepted = false, double room = UsualRoom, PaperLanguage? language = null)
    {
        ArgumentNullException.ThrowIfNull(findings);
        ArgumentException.ThrowIfNullOrEmpty(quantityId);
        (GroupFindings, QuantityEstimate)[] all = [.. findings.Groups.Select(g => (Group: g, Estimate: g.Find(quantityId)))
            .Where(r => r.Estimate is not null).Select(r => (r.Group, r.Estimate!)).OrderBy(r => r.Item2.Value)];
        ReportView view = ReportView.Class with
        {
            Accepted = accepted && quantityId == findings.Practical.Findings.Key,
            Language = language ?? PaperLanguage.BritishEnglish,
        };
        return all.Length == 0 ? null : new Drawing(findings, all, view, room).Draw();
    }

    private sealed class Drawing(ClassFindings findings, (GroupFindings Group, QuantityEstimate Estimate)[] rows, ReportView view, double room)
    {
        private readonly QuantityDefinition quantity = rows[0].Estimate.Quantity;
        private readonly ChartTexts texts = new(view.Language);
        private readonly GroupMarks marks = new(findings, rows[0].Estimate.Quantity, view);

        public Chart Draw()
        {
            IReadOnlyList<string> name = TextWidth.Broken(Shown.Axis(quantity, texts), Width - 8, 2);
            double top = (marks.Pooled is null ? 4 : 28) + (marks.Accepted is null ? 0 : 22);
            double height = top + 6 + room + Tick + (LineOfName * name.Count) + 8;
            var across = new Axis(marks.Span(rows), Side, Width - Side, FewSteps);
            double[] values = [.. rows.Select(r => r.Estimate.Value).Where(v => v >= across.Low && v <= across.High)];
            string title = texts.DotsHeading(Text.Capital(quantity.Label));
            var picture = new SvgPicture("dots-chart", Width, height, title, Description(values));
            var frame = new Frame(picture, Side, top, Width - Side, top + 6 + room);
            marks.Band(picture, frame, across);
            Axis(picture, frame, across, name);
            marks.AcceptedLine(picture, frame, across);
            Dots(picture, frame, [.. values.Select(across.At)]);
            return new Chart(title, picture, Caption(values.Length));
        }

        private static void Axis(SvgPicture picture, Frame frame, Axis across, IReadOnlyList<string> name)
        {
            double last = double.NegativeInfinity;
            foreach (double tick in across.Ticks)
            {
                (double x, string text) = (across.At(tick), across.TextOf(tick));
                double half = TextWidth.Of(text) / 2;
                picture.Line(x, frame.Bottom, x, frame.Bottom + 4, "axis");
                if (x - half > last + 6)
                {
                    picture.Text(Math.Clamp(x, half, Width - half), frame.Bottom + Tick, text, "label", "middle");
                    last = x + half;
                }
            }

            picture.Line(frame.Left, frame.Bottom, frame.Right, frame.Bottom, "axis");
            for (int i = 0; i < name.Count; i++)
            {
                picture.Text(Width / 2, frame.Bottom + Tick + (LineOfName * (i + 1)) + 2, name[i], "label", "middle");
            }
        }

        /// <summary>Each dot at its value, as low as those that it would hide let it; smaller where a tower would leave the picture.</summary>
        private void Dots(SvgPicture picture, Frame frame, double[] places)
        {
            double radius = LargestRadius;
            int[] levels = Levels(places, radius);
            while ((levels.DefaultIfEmpty().Max() + 1) * 2 * radius > room && radius > 1)
            {
                radius *= 0.9;
                levels = Levels(places, radius);
            }

            for (int i = 0; i < places.Length; i++)
            {
                picture.Circle(places[i], frame.Bottom - 2 - (radius * ((2 * levels[i]) + 1)), radius - 0.5, "dot");
            }
        }

        private static int[] Levels(double[] places, double radius)
        {
            int[] levels = new int[places.Length];
            for (int i = 0; i < places.Length; i++)
            {
                HashSet<int> taken = [.. Enumerable.Range(0, i).Where(j => places[i] - places[j] < 2 * radius).Select(j => levels[j])];
                levels[i] = Enumerable.Range(0, i + 1).First(level => !taken.Contains(level));
            }

            return levels;
        }

        private string Caption(int drawn)
        {
            int off = rows.Length - drawn;
            string[] sentences =
            [
                texts.DotIsGroup,
                .. marks.Pooled is null ? (string[])[] : [texts.DotsBand],
                .. off == 0 ? (string[])[] : [off == 1 ? texts.ValueOutside(Shown.InDigits(rows.Length)) : texts.ValuesOutside(Shown.InDigits(off), Shown.InDigits(rows.Length))],
            ];
            return string.Join(' ', sentences);
        }

        private string Description(double[] values)
        {
            string[] sentences =
            [
                values.Length == 0 ? texts.DotsNone : texts.DotsDescription(Shown.InDigits(values.Length), Written(values.Min()), Written(values.Max())),
                .. marks.Pooled is ClassQuantity value ? [texts.DotsClassValue(value.Text, Written(value.Interval.Low), Written(value.Interval.High))] : (string[])[],
                .. marks.Accepted is string known ? [texts.AcceptedValue(known)] : (string[])[],
            ];
            return string.Join(' ', sentences);
        }

        private string Written(double value) => Figures.Text(value, Figures.DecimalsFor(marks.Pooled?.StandardUncertainty ?? rows[0].Estimate.StandardUncertainty));
    }
}
