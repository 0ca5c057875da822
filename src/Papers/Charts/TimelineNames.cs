using Calx.Practicals.Clock;

namespace Calx.Papers.Charts;

/// <summary>The names of a lesson's steps, each on a pole over the bar of its first time.</summary>
internal sealed class TimelineNames
{
    private const double MostWidth = 330;

    private readonly Name[] names;

    private TimelineNames(Name[] names) => this.names = names;

    private sealed record Name(double X, string Text, int Level);

    /// <summary>Room that they need over the row.</summary>
    public double Height => names.Length == 0 ? 0 : ((names.Max(n => n.Level) + 1) * Flags.LevelHeight) + 8;

    /// <summary>Names what a group does, and what the class does together.</summary>
    public static TimelineNames Of(LessonTimeline timeline, int group, MinuteAxis axis)
    {
        TimelineBar[] firsts = [.. timeline.Bars
            .Where(b => (b.Group == group || b.Group == 0) && b.Kind != BarKind.Waiting)
            .GroupBy(b => b.StepId).Select(g => g.MinBy(b => b.FromMinute)!).OrderBy(b => b.FromMinute)];
        double[] poles = [.. firsts.Select(b => axis.At(b.FromMinute) + 1)];
        string[] texts = [.. firsts.Select((b, i) => TextWidth.Cut(b.Label, Math.Min(MostWidth, TimelineLayout.Width - poles[i] - Flags.Beside)))];
        int[] levels = Flags.Levels(poles, [.. texts.Select(t => TextWidth.Of(t))]);
        return new TimelineNames([.. poles.Select((x, i) => new Name(x, texts[i], levels[i]))]);
    }

    /// <summary>Draws them over the row that begins at <paramref name="rowTop"/>.</summary>
    public void Draw(SvgPicture picture, double rowTop)
    {
        foreach (Name name in names)
        {
            double y = rowTop - 7 - (name.Level * Flags.LevelHeight);
            picture.Line(name.X, y - 11, name.X, rowTop + 3, "leader");
        }

        foreach (Name name in names)
        {
            picture.Text(name.X + Flags.Beside, rowTop - 7 - (name.Level * Flags.LevelHeight), name.Text);
        }
    }
}
