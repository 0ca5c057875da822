using System.Globalization;
using Calx.Papers.Handouts;
using Calx.Papers.Reports;
using Calx.Papers.Texts;
using Calx.Practicals.Definition;
using Calx.Practicals.Findings;
using Calx.Practicals.Inference;

namespace Calx.Papers.Charts;

/// <summary>
/// The class's key quantity while readings come in, for a projector: a row for every group by its number, empty until the
/// group has a value, and the class's interval as it narrows. It fills what a screen of 1920 by 1080 has beside the
/// minutes that are left, where its letters are over 30 px high; it has few ticks and no names.
/// </summary>
public static class ClassChart
{
    private const double Width = 560;
    private const double Height = 386;
    private const double BelowRows = 50;
    private const double MostForName = 150;

    /// <summary>With fewer steps the ticks stand far enough apart for letters of this size.</summary>
    private const int FewSteps = 3;

    /// <summary>Draws it, however far the lesson is.</summary>
    /// <param name="practical">The practical.</param>
    /// <param name="groups">The names of all groups as in their readings, those without any among them; a group's place here,
    /// from 1, is its number.</param>
    /// <param name="findings">What the readings show so far; null where there are none.</param>
    /// <param name="view">For whom; null for a class, which sees no odd mark and no accepted value.</param>
    /// <param name="notes">A word beside the number of a group, by number, that a class has to know: 'simulated', 'away'; null
    /// for none.</param>
    public static Chart Of(
        Practical practical,
        IReadOnlyList<string> groups,
        ClassFindings? findings,
        ReportView? view = null,
        IReadOnlyDictionary<int, string>? notes = null)
    {
        ArgumentNullException.ThrowIfNull(practical);
        ArgumentNullException.ThrowIfNull(groups);
        QuantityDefinition key = practical.Quantities.First(q => q.Id == practical.Findings.Key);
        string[] labels = [.. Enumerable.Range(1, groups.Count).Select(n => Label(n, notes?.GetValueOrDefault(n)))];
        return new Drawing(key, labels, groups, findings, view ?? ReportView.Class).Draw();
    }

    private static string Label(int number, string? note) =>
        (string.IsNullOrWhiteSpace(note) ? string.Empty : note + " ") + number.ToString(CultureInfo.InvariantCulture);

    private sealed class Drawing
    {
        private readonly QuantityDefinition quantity;
        private readonly string[] labels;
        private readonly (GroupFindings Group, QuantityEstimate Estimate)[][] byNumber;
        private readonly (GroupFindings Group, QuantityEstimate Estimate)[] all;
        private readonly GroupMarks? marks;
        private readonly PaperLanguage language;
        private readonly ChartTexts texts;

        public Drawing(
            QuantityDefinition quantity, string[] labels, IReadOnlyList<string> names, ClassFindings? findings, ReportView view)
        {
            this.quantity = quantity;
            this.labels = labels;
            language = view.Language;
            texts = new ChartTexts(language);
            ILookup<string, GroupFindings> found = (findings?.Groups ?? []).ToLookup(g => g.Readings.Name, StringComparer.Ordinal);
            byNumber = [.. names.Select(name => found[name].Select(g => (Group: g, Estimate: g.Find(quantity.Id)))
                .Where(r => r.Estimate is not null).Select(r => (r.Group, r.Estimate!)).ToArray())];
            all = [.. byNumber.SelectMany(r => r)];
            marks = findings is null || all.Length == 0 ? null : new GroupMarks(findings, quantity, view);
        }

        public Chart Draw()
        {
            int having = byNumber.Count(r => r.Length > 0);
            string heading = texts.CountOfGroups(Text.Capital(quantity.Label), Shown.InDigits(having), Shown.InDigits(labels.Length));
            var picture = new SvgPicture("class-chart", Width, Height, heading, Description());
            double left = 12 + Math.Min(MostForName, labels.Select(l => TextWidth.Of(l)).DefaultIfEmpty().Max());
            double top = marks is null ? 12 : marks.Accepted is null ? 34 : 56;
            var frame = new Frame(picture, left, top, Width - 16, Height - BelowRows);
            Axis? across = marks is null ? null : new Axis(marks.Span(all), frame.Left, frame.Right, FewSteps);
            DrawFrame(picture, frame, across);
            for (int i = 0; i < labels.Length; i++)
            {
                DrawRow(picture, frame, across, i);
            }

            return new Chart(heading, picture, marks is null ? string.Empty : $"{texts.Intervals} {marks.CutCaption(all, across!)}".TrimEnd());
        }

        private void DrawFrame(SvgPicture picture, Frame frame, Axis? across)
        {
            if (across is null || marks is null)
            {
                picture.Line(frame.Left, frame.Bottom, frame.Right, frame.Bottom, "axis");
                picture.Text((frame.Left + frame.Right) / 2, frame.Bottom + 30, texts.NoValueYet, "axis-name", "middle");
                return;
            }

            marks.Band(picture, frame, across);
            frame.Across(across, Shown.Axis(quantity, texts));
            marks.AcceptedLine(picture, frame, across);
        }

        private void DrawRow(SvgPicture picture, Frame frame, Axis? across, int index)
        {
            double y = frame.Top + ((frame.Bottom - frame.Top) * (index + 0.5) / labels.Length);
            bool odd = byNumber[index].Any(r => marks!.IsOdd(r.Group));
            string role = byNumber[index].Length == 0 ? "quiet" : odd ? "odd-label" : "label";
            picture.Text(frame.Left - 8, y + 5, TextWidth.Cut(labels[index], MostForName), role, "end");
            if (byNumber[index].Length == 0)
            {
                picture.Line(frame.Left, y, frame.Right, y, "grid");
            }

            foreach ((GroupFindings, QuantityEstimate) trial in byNumber[index])
            {
                marks!.Value(picture, frame, across!, trial, y);
            }
        }

        private string Description()
        {
            string[] values = [.. Enumerable.Range(0, labels.Length).Where(i => byNumber[i].Length > 0)
                .Select(i => texts.GroupValue(labels[i], Sentences.And([.. byNumber[i].Select(r => r.Estimate.Text)], language)))];
            string[] empty = [.. Enumerable.Range(0, labels.Length).Where(i => byNumber[i].Length == 0).Select(i => labels[i])];
            string[] sentences =
            [
                values.Length == 0 ? texts.NoValueYetSentence : $"{string.Join("; ", values)}.",
                .. values.Length == 0 || empty.Length == 0 ? (string[])[] : [texts.WaitedFor(string.Join(", ", empty))],
                .. marks?.Pooled is ClassQuantity pooled ? [texts.ClassValue(pooled.Text)] : (string[])[],
            ];
            return string.Join(' ', sentences);
        }
    }
}
