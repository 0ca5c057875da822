using Calx.Measurement.Numbers;
using Calx.Measurement.Uncertainty;
using Calx.Papers.Reports;
using Calx.Papers.Texts;
using Calx.Practicals.Definition;
using Calx.Practicals.Findings;
using Calx.Practicals.Inference;

namespace Calx.Papers.Charts;

/// <summary>The marks of a chart in which every group has a row: its value with the 95 % interval, the class's interval as a
/// band through all rows, the accepted value as a line.</summary>
internal sealed class GroupMarks
{
    private readonly ClassFindings findings;
    private readonly QuantityDefinition quantity;
    private readonly ReportView view;
    private readonly AcceptedResult.Compared? accepted;
    private readonly ChartTexts texts;

    public GroupMarks(ClassFindings findings, QuantityDefinition quantity, ReportView view)
    {
        this.findings = findings;
        this.quantity = quantity;
        this.view = view;
        texts = new ChartTexts(view.Language);
        accepted = view.Accepted ? findings.Class.Accepted as AcceptedResult.Compared : null;
        Pooled = findings.Class.Find(quantity.Id) is { Count: > 1 } pooled ? pooled : null;
    }

    /// <summary>The class's value, or null where there is none: one group is no class.</summary>
    public ClassQuantity? Pooled { get; }

    /// <summary>The accepted value in words, or null where it is not shown.</summary>
    public string? Accepted => accepted is null ? null : Shown.Accepted(accepted);

    /// <summary>Whether anything stands over the rows.</summary>
    public bool HasLabels => accepted is not null || Pooled is not null;

    /// <summary>What the axis has to hold. The groups without an odd result decide the scale, with as much again on either
    /// side for the others: one gross result does not squash the rest.</summary>
    public IReadOnlyList<double> Span(IReadOnlyList<(GroupFindings Group, QuantityEstimate Estimate)> rows)
    {
        IReadOnlyList<GroupFindings> core = Shown.Core([.. rows.Select(r => r.Group)]);
        var values = core.Select(g => g.Find(quantity.Id)!).SelectMany(Ends).ToList();
        if (accepted is not null)
        {
            values.Add(accepted.Accepted);
        }

        double low = values.Min();
        double high = values.Max();
        double span = high - low;
        return [.. values, .. rows.Select(r => r.Estimate.Value).Where(v => v >= low - span && v <= high + span)];
    }

    /// <summary>Draws the class's interval, named over it.</summary>
    public void Band(SvgPicture picture, Frame frame, Axis across)
    {
        if (Pooled is null)
        {
            return;
        }

        double from = across.At(Math.Clamp(Pooled.Interval.Low, across.Low, across.High));
        double to = across.At(Math.Clamp(Pooled.Interval.High, across.Low, across.High));
        picture.Rectangle(from, frame.Top, to - from, frame.Bottom - frame.Top, "band");
        picture.Text((from + to) / 2, frame.Top - (accepted is null ? 12 : 34), texts.ClassMark(Pooled.Text), "mark-label", Anchor(from, to, frame));
    }

    /// <summary>Draws the accepted value, where it is shown.</summary>
    public void AcceptedLine(SvgPicture picture, Frame frame, Axis across)
    {
        if (accepted is null)
        {
            return;
        }

        double x = across.At(accepted.Accepted);
        picture.Line(x, frame.Top - 6, x, frame.Bottom, "theory");
        picture.Text(x, frame.Top - 12, texts.AcceptedMark(Shown.Accepted(accepted)), "theory-label", Anchor(x, x, frame));
    }

    /// <summary>Whether a group is to be seen as one with an odd result.</summary>
    public bool IsOdd(GroupFindings group) => view.Causes && group.IsAnomalous;

    /// <summary>Draws a group's value with its interval, or a pointer where it is off the scale.</summary>
    public void Value(SvgPicture picture, Frame frame, Axis across, (GroupFindings Group, QuantityEstimate Estimate) row, double y)
    {
        QuantityEstimate estimate = row.Estimate;
        bool odd = IsOdd(row.Group);
        if (estimate.Value < across.Low || estimate.Value > across.High)
        {
            bool above = estimate.Value > across.High;
            double tip = above ? frame.Right - 4 : frame.Left + 4;
            double back = above ? tip - 11 : tip + 11;
            picture.Polygon([(tip, y), (back, y - 6), (back, y + 6)], odd ? "odd-dot" : "dot");
            string text = texts.OffScaleMark(estimate.Text);
            picture.Text(above ? back - 8 : back + 8, y + 5, text, odd ? "odd-label" : "label", above ? "end" : "start");
            return;
        }

        CoverageInterval ends = estimate.Interval ?? new CoverageInterval(across.Low, across.High, 0.95);
        double low = across.At(Math.Max(ends.Low, across.Low));
        picture.Line(low, y, across.At(Math.Min(ends.High, across.High)), y, odd ? "odd-spread" : "spread");
        if (odd)
        {
            picture.Diamond(across.At(estimate.Value), y, 7, "odd-dot");
        }
        else
        {
            picture.Circle(across.At(estimate.Value), y, 4.5, "dot");
        }

        // Over the mark, which may stand at the edge itself.
        if (IsCut(estimate, across).Low)
        {
            GoesOn(picture, frame.Left, 1, y, odd);
        }

        if (IsCut(estimate, across).High)
        {
            GoesOn(picture, frame.Right, -1, y, odd);
        }
    }

    /// <summary>What is to be said of intervals that are longer than the axis; empty where none is.</summary>
    public string CutCaption(IReadOnlyList<(GroupFindings Group, QuantityEstimate Estimate)> rows, Axis across) =>
        rows.Any(r => r.Estimate.Value >= across.Low && r.Estimate.Value <= across.High && IsCut(r.Estimate, across) != (false, false))
            ? texts.ArrowHead : string.Empty;

    private static (bool Low, bool High) IsCut(QuantityEstimate estimate, Axis across) =>
        (!(estimate.Interval?.Low >= across.Low - 1e-9), !(estimate.Interval?.High <= across.High + 1e-9));

    /// <summary>An arrow head at the edge: the line goes on.</summary>
    private static void GoesOn(SvgPicture picture, double edge, int inwards, double y, bool odd) =>
        picture.Polygon([(edge, y), (edge + (9 * inwards), y - 5), (edge + (9 * inwards), y + 5)], odd ? "odd-on" : "on");

    private static IEnumerable<double> Ends(QuantityEstimate estimate) =>
    [
        estimate.Interval?.Low ?? estimate.Value - estimate.StandardUncertainty,
        estimate.Interval?.High ?? estimate.Value + estimate.StandardUncertainty,
    ];

    private static string Anchor(double from, double to, Frame frame)
    {
        double middle = (from + to) / 2;
        return middle > frame.Right - 70 ? "end" : middle < frame.Left + 70 ? "start" : "middle";
    }
}
