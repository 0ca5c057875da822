using System.Globalization;
using Calx.Papers.Texts;
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
    /// <param name="language">The language of its own texts; null for British English.</param>
    public static Chart? Of(AmountAdvice amounts, int groups, PaperLanguage? language = null)
    {
        ArgumentNullException.ThrowIfNull(amounts);
        bool some = amounts.Curve.Count > 1 && amounts.Curve.All(p => p.Chances.Count > 0);
        return some ? new Drawing(amounts, groups, language ?? PaperLanguage.BritishEnglish).Draw() : null;
    }

    private sealed class Drawing(AmountAdvice amounts, int groups, PaperLanguage language)
    {
        private readonly ChartTexts texts = new(language);
        private readonly AmountMarks marks = AmountMarks.Of(amounts, language);
        private readonly IReadOnlyList<AmountLine> lines = AmountLine.All(amounts, groups, new ChartTexts(language));

        public Chart Draw()
        {
            string heading = texts.AmountHeading;
            double top = marks.Height;
            var picture = new SvgPicture("amount-chart", Width, top + PlotHeight + BelowPlot, heading, Description());
            var frame = new Frame(picture, 58, top, PlotRight, top + PlotHeight);
            var across = new Axis(amounts.Curve.Append(amounts.Planned).Select(p => p.SampleInGrams), frame.Left, frame.Right);
            var upwards = new Axis([0, 100], frame.Bottom, frame.Top);
            frame.Across(across, texts.AmountAxis);
            WriteHundreds(picture, frame, upwards);
            marks.Draw(picture, frame, across, Width);
            foreach (AmountLine line in lines)
            {
                line.Draw(picture, across, upwards);
            }

            AmountLine.WriteNames(picture, lines, frame, upwards, Width);
            return new Chart(heading, picture, Caption());
        }

        private void WriteHundreds(SvgPicture picture, Frame frame, Axis upwards)
        {
            foreach (double tick in upwards.Ticks)
            {
                picture.Line(frame.Left, upwards.At(tick), frame.Right, upwards.At(tick), "grid");
                picture.Text(frame.Left - 8, upwards.At(tick) + 5, texts.Percent(upwards.TextOf(tick)), "tick", "end");
            }

            picture.Line(frame.Left, frame.Top, frame.Left, frame.Bottom, "axis");
        }

        private string Caption()
        {
            string kinds = groups == 1 ? texts.AmountOneGroup : texts.AmountGroups(Shown.InDigits(groups));
            return $"{kinds} {texts.AmountLargest(Grams(amounts.LargestInGrams))}";
        }

        private string Description()
        {
            IEnumerable<string> planned = amounts.Planned.Chances.Select(
                c => texts.AmountChance(c.Conclusion.Label, Hundreds(c.ClassRight.Value), Hundreds(c.GroupRight.Value)));
            return texts.AmountDescription(
                Grams(amounts.Curve[0].SampleInGrams), Grams(amounts.Curve[^1].SampleInGrams), Grams(amounts.Planned.SampleInGrams),
                string.Join("; ", planned), Hundreds(amounts.Planned.ClassWrong));
        }

        private static string Grams(double grams) => grams.ToString("0.######", CultureInfo.InvariantCulture);

        private static string Hundreds(double probability) => (100 * probability).ToString("F0", CultureInfo.InvariantCulture);
    }
}
