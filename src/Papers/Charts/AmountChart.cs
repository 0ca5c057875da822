using System.Globalization;
using Calx.Practicals.Planning;
using Calx.Practicals.Planning.Amounts;

namespace Calx.Papers.Charts;

/// <summary>How probably the class, and one group alone, comes to each conclusion, by the mass of the sample; and how probably
/// the class is led astray.</summary>
public static class AmountChart
{
    private const double Width = 680;
    private const double PlotRight = 452;
    private const double PlotHeight = 320;
    private const double BelowPlot = 58;

    /// <summary>Draws it, or returns null where no amounts were looked at, or none of them allows a conclusion.</summary>
    /// <param name="amounts">The advice.</param>
    /// <param name="groups">How many groups the class has.</param>
    public static Chart? Of(AmountAdvice amounts, int groups)
    {
        ArgumentNullException.ThrowIfNull(amounts);
        bool some = amounts.Curve.Count > 1 && amounts.Curve.All(p => p.Chances.Count > 0);
        return some ? new Drawing(amounts, groups).Draw() : null;
    }

    private sealed class Drawing(AmountAdvice amounts, int groups)
    {
        private readonly AmountMarks marks = AmountMarks.Of(amounts);
        private readonly IReadOnlyList<AmountLine> lines = AmountLine.All(amounts, groups);

        public Chart Draw()
        {
            const string heading = "How probably each conclusion is reached";
            double top = marks.Height;
            var picture = new SvgPicture("amount-chart", Width, top + PlotHeight + BelowPlot, heading, Description());
            var frame = new Frame(picture, 58, top, PlotRight, top + PlotHeight);
            var across = new Axis(amounts.Curve.Append(amounts.Planned).Select(p => p.SampleInGrams), frame.Left, frame.Right);
            var upwards = new Axis([0, 100], frame.Bottom, frame.Top);
            frame.Across(across, "mass of the sample / g");
            WriteHundreds(picture, frame, upwards);
            marks.Draw(picture, frame, across, Width);
            foreach (AmountLine line in lines)
            {
                line.Draw(picture, across, upwards);
            }

            AmountLine.WriteNames(picture, lines, frame, upwards, Width);
            return new Chart(heading, picture, Caption());
        }

        private static void WriteHundreds(SvgPicture picture, Frame frame, Axis upwards)
        {
            foreach (double tick in upwards.Ticks)
            {
                picture.Line(frame.Left, upwards.At(tick), frame.Right, upwards.At(tick), "grid");
                picture.Text(frame.Left - 8, upwards.At(tick) + 5, $"{upwards.TextOf(tick)} %", "tick", "end");
            }

            picture.Line(frame.Left, frame.Top, frame.Left, frame.Bottom, "axis");
        }

        private string Caption()
        {
            string kinds = groups == 1
                ? "Whole lines: the one group finds it; dotted: a wrong answer."
                : string.Create(CultureInfo.InvariantCulture, $"Whole lines: the class of {groups} groups; broken lines: one group alone; dotted: a wrong answer.");
            return string.Create(CultureInfo.InvariantCulture, $"{kinds} No amount above {amounts.LargestInGrams:0.######} g is looked at.");
        }

        private string Description()
        {
            IEnumerable<string> planned = amounts.Planned.Chances.Select(c => string.Create(
                CultureInfo.InvariantCulture,
                $"{c.Conclusion.Label}: class {100 * c.ClassRight.Value:F0} %, one group {100 * c.GroupRight.Value:F0} %"));
            return string.Create(
                CultureInfo.InvariantCulture,
                $"Probabilities from {amounts.Curve[0].SampleInGrams:0.######} g to {amounts.Curve[^1].SampleInGrams:0.######} g. With the planned {amounts.Planned.SampleInGrams:0.######} g, {string.Join("; ", planned)}; a wrong answer of the class {100 * amounts.Planned.ClassWrong:F0} %.");
        }
    }
}
