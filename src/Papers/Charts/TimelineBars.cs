using System.Globalization;
using Calx.Papers.Texts;
using Calx.Practicals.Clock;

namespace Calx.Papers.Charts;

/// <summary>The bars of a lesson: each kind has a shape of its own, so that none needs a colour or a key.</summary>
internal static class TimelineBars
{
    /// <summary>A weighing takes less than a minute; a narrower bar could not be seen.</summary>
    private const double LeastWidth = 2.5;

    private const double ToothWidth = 6;

    /// <summary>Lower rows have no room for words between the bars.</summary>
    private const double LeastRowForWords = 20;

    /// <summary>What the class does together: bands through all rows.</summary>
    public static void DrawBands(SvgPicture picture, TimelineLayout layout, LessonTimeline timeline, ChartTexts texts)
    {
        foreach (TimelineBar bar in timeline.Bars.Where(b => b.Kind == BarKind.Class).DistinctBy(b => (b.StepId, b.FromMinute, b.ToMinute)))
        {
            double from = layout.Axis.At(bar.FromMinute);
            picture.Rectangle(from, layout.Top, layout.Axis.At(bar.ToMinute) - from, layout.Bottom - layout.Top, "band", Tip(bar with { Group = 0 }, texts));
            picture.Line(from, layout.Top, from, layout.Bottom, "grid");
        }
    }

    /// <summary>A group's own bars.</summary>
    public static void Draw(SvgPicture picture, TimelineLayout layout, TimelineBar bar, ChartTexts texts)
    {
        double from = layout.Axis.At(bar.FromMinute);
        double width = layout.Axis.At(bar.ToMinute) - from;
        double ground = layout.Ground(bar.Group);
        double tall = layout.RowHeight * 0.68;
        switch (bar.Kind)
        {
            case BarKind.Weighing:
                picture.Rectangle(from, ground - tall, Math.Max(width, LeastWidth), tall, "weighing", Tip(bar, texts));
                break;
            case BarKind.Flame:
                picture.Polygon(Flame(from, from + width, ground, tall), "flame", Tip(bar, texts));
                break;
            case BarKind.Cooling:
                picture.Polygon([(from, ground), (from, ground - tall), (from + width, ground - (0.25 * tall)), (from + width, ground)], "cooling", Tip(bar, texts));
                break;
            case BarKind.Waiting:
                picture.Rectangle(from, ground - 3, width, 3, "waiting", Tip(bar, texts));
                break;
            default:
                picture.Rectangle(from, ground - (0.55 * tall), width, 0.55 * tall, "work", Tip(bar, texts));
                break;
        }
    }

    /// <summary>How long a group waits, over the bar of its waiting where there is room.</summary>
    public static void WriteWait(SvgPicture picture, TimelineLayout layout, TimelineBar bar, ChartTexts texts)
    {
        double from = layout.Axis.At(bar.FromMinute);
        double width = layout.Axis.At(bar.ToMinute) - from;
        string text = texts.Waits((bar.ToMinute - bar.FromMinute).ToString("F0", CultureInfo.InvariantCulture));
        if (layout.RowHeight >= LeastRowForWords && TextWidth.Of(text, 14) + 6 <= width)
        {
            picture.Text(from + (width / 2), layout.Ground(bar.Group) - 6, text, "tick", "middle");
        }
    }

    /// <summary>A bar in words.</summary>
    public static string Tip(TimelineBar bar, ChartTexts texts)
    {
        (string from, string to) = (Tenths(bar.FromMinute), Tenths(bar.ToMinute));
        string group = Shown.InDigits(bar.Group);
        return bar.Group == 0 ? texts.BarOfClass(bar.Label, from, to)
            : bar.Kind == BarKind.Waiting ? texts.WaitingOfGroup(group, bar.Label, from, to) : texts.BarOfGroup(group, bar.Label, from, to);
    }

    private static string Tenths(double minute) => minute.ToString("F1", CultureInfo.InvariantCulture);

    private static IEnumerable<(double X, double Y)> Flame(double from, double to, double ground, double tall)
    {
        int teeth = Math.Max(1, (int)Math.Round((to - from) / ToothWidth));
        double tooth = (to - from) / teeth;
        yield return (from, ground);
        for (int i = 0; i < teeth; i++)
        {
            yield return (from + (i * tooth), ground - (0.62 * tall));
            yield return (from + ((i + 0.5) * tooth), ground - tall);
        }

        yield return (to, ground - (0.62 * tall));
        yield return (to, ground);
    }
}
