using Calx.Practicals.Clock;

namespace Calx.Papers.Charts;

/// <summary>Where the rows of a lesson's timeline stand: one for each group, with room above one of them for the names of the
/// steps.</summary>
internal sealed class TimelineLayout
{
    /// <summary>Width of the picture.</summary>
    public const double Width = 860;

    /// <summary>Where minute 0 stands; left of it the numbers of the groups.</summary>
    public const double Left = 54;

    /// <summary>Right end of the minutes; behind it there is room for the last names.</summary>
    public const double Right = Width - 116;

    private const double TopMargin = 8;

    /// <summary>Room for the word over the numbers of the groups, where no names of steps stand beside it.</summary>
    private const double HeadingHeight = 18;

    private const double UsualRow = 25;
    private const double LowRow = 17;

    /// <summary>With more groups than this the rows are lower.</summary>
    private const int MostUsual = 24;

    public TimelineLayout(LessonTimeline timeline, double bell)
    {
        Axis = new MinuteAxis(Math.Max(bell, timeline.EndMinute), Left, Right);
        RowHeight = timeline.Groups > MostUsual ? LowRow : UsualRow;
        Named = Enumerable.Range(1, timeline.Groups)
            .MaxBy(g => timeline.Bars.Where(b => b.Group == g).Select(b => b.StepId).Distinct().Count());
        Names = TimelineNames.Of(timeline, Named, Axis);
        Top = TopMargin + (Named == 1 ? Names.Height : HeadingHeight);
        Bottom = Top + (RowHeight * timeline.Groups) + (Named == 1 ? 0 : Names.Height) + 4;
    }

    /// <summary>The minutes.</summary>
    public MinuteAxis Axis { get; }

    /// <summary>Height of a row.</summary>
    public double RowHeight { get; }

    /// <summary>Group whose steps are named: the one with most of them.</summary>
    public int Named { get; }

    /// <summary>The names of the steps.</summary>
    public TimelineNames Names { get; }

    /// <summary>Upper end of the bands.</summary>
    public double Top { get; }

    /// <summary>Lower end of the bands, where the axis is.</summary>
    public double Bottom { get; }

    /// <summary>Upper end of a group's row.</summary>
    public double RowTop(int group) => Top + (RowHeight * (group - 1)) + (Named > 1 && group >= Named ? Names.Height : 0);

    /// <summary>Line on which a group's bars stand.</summary>
    public double Ground(int group) => RowTop(group) + (RowHeight * 0.78);

    /// <summary>Line of the critical path, under the bars.</summary>
    public double Under(int group) => RowTop(group) + (RowHeight * 0.92);
}
