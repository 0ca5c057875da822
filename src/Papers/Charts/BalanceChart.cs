using System.Globalization;
using Calx.Measurement.Numbers;
using Calx.Papers.Texts;
using Calx.Practicals.Findings.History;

namespace Calx.Papers.Charts;

/// <summary>The checks of one balance over time: what it showed less what was marked on the weight, in divisions, with a band
/// of one division to either side.</summary>
public static class BalanceChart
{
    private const double Width = 620;
    private const double Height = 360;

    /// <summary>Draws it, or returns null where the balance has not been checked.</summary>
    /// <param name="history">The balance's checks.</param>
    /// <param name="name">The letter on the balance or its name.</param>
    /// <param name="id">Unique on the page, where it has several.</param>
    /// <param name="language">The language of its own texts; null for British English.</param>
    public static Chart? Of(BalanceHistory history, string name, string id = "balance-chart", PaperLanguage? language = null)
    {
        ArgumentNullException.ThrowIfNull(history);
        ArgumentException.ThrowIfNullOrWhiteSpace(name);
        return history.Checks.Count == 0 ? null : new Drawing(history, name, id, new ChartTexts(language ?? PaperLanguage.BritishEnglish)).Draw();
    }

    private sealed class Drawing(BalanceHistory history, string name, string id, ChartTexts texts)
    {
        public Chart Draw()
        {
            // One gross check does not squash the others.
            BalanceCheckMade[] shown = [.. history.Checks.Where(c => !history.IsFar(c))];
            string[] off = [.. history.Checks.Except(shown).Select(Told)];
            string heading = texts.BalanceHeading(name);
            var picture = new SvgPicture(id, Width, Height, heading, $"{string.Join("; ", history.Checks.Select(Told))}.");
            var frame = new Frame(picture, 62, 40, Width - 24, Height - 36);
            var across = new DateAxis([.. history.Checks.Select(c => c.Day)], frame.Left, frame.Right, texts);
            double edge = 1.5 * BalanceHistory.ToleranceInDivisions;
            var upwards = new Axis(shown.Select(history.ErrorInDivisions).Concat([-edge, edge]), frame.Bottom, frame.Top);
            Background(picture, frame, across, upwards);
            Line(picture, frame, across, upwards);
            foreach (BalanceCheckMade check in shown)
            {
                Mark(picture, across.At(check.Day), upwards.At(history.ErrorInDivisions(check)), history.IsWithin(check));
            }

            string line = history.Drift is Drift.Judged { IsBeyondChance: true } ? $"{texts.BalanceLine} " : string.Empty;
            return new Chart(heading, picture, $"{line}{texts.BalanceBand} {Shown.Caption(off, 0, 0, texts)}".TrimEnd());
        }

        private void Background(SvgPicture picture, Frame frame, DateAxis across, Axis upwards)
        {
            double top = upwards.At(BalanceHistory.ToleranceInDivisions);
            picture.Rectangle(frame.Left, top, frame.Right - frame.Left, upwards.At(-BalanceHistory.ToleranceInDivisions) - top, "band");
            frame.Upwards(upwards, texts.BalanceAxis);
            foreach ((DateOnly day, string text) in across.Ticks)
            {
                picture.Line(across.At(day), frame.Top, across.At(day), frame.Bottom, "grid");
                picture.Text(across.At(day), frame.Bottom + 20, text, "tick", "middle");
            }

            picture.Line(frame.Left, upwards.At(0), frame.Right, upwards.At(0), "axis");
        }

        private void Line(SvgPicture picture, Frame frame, DateAxis across, Axis upwards)
        {
            if (history.Drift is not Drift.Judged { IsBeyondChance: true } drift)
            {
                return;
            }

            DateOnly first = history.Checks[0].Day;
            DateOnly last = history.Checks[^1].Day;
            picture.Line(across.At(first), At(first), across.At(last), At(last), "fit");

            double At(DateOnly day) => Math.Clamp(upwards.At(drift.ValueOn(day)), frame.Top, frame.Bottom);
        }

        private static void Mark(SvgPicture picture, double x, double y, bool within)
        {
            if (within)
            {
                picture.Circle(x, y, 4.5, "dot");
            }
            else
            {
                picture.Diamond(x, y, 7, "odd-dot");
            }
        }

        private string Told(BalanceCheckMade check)
        {
            string month = texts.MonthNames.Split(' ')[check.Day.Month - 1];
            string day = texts.FullDay(Shown.InDigits(check.Day.Day), month, check.Day.ToString("yyyy", CultureInfo.InvariantCulture));
            double error = history.ErrorInDivisions(check);
            return texts.BalanceCheck(day, $"{(error > 0 ? "+" : string.Empty)}{Figures.Text(error, error == Math.Round(error) ? 0 : 1)}");
        }
    }
}
