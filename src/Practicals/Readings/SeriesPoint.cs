using Calx.Measurement.Numbers;
using Calx.Practicals.Definition;

namespace Calx.Practicals.Readings;

/// <summary>One point of a group's mass against time.</summary>
/// <param name="Time">In the unit of the practical's series.</param>
/// <param name="Value">In g, as read: the mass, or the mass lost so far.</param>
/// <param name="Cell">Where it stands in a file; null for a reading typed in a lesson.</param>
public sealed record SeriesPoint(WrittenNumber Time, WrittenNumber Value, CellPosition? Cell = null);

/// <summary>Mass against time as one group wrote it, in order of time.</summary>
public sealed class GroupSeries
{
    /// <summary>Takes the points; of two at one time the first stands.</summary>
    /// <param name="points">In any order.</param>
    /// <param name="isLoss">Whether the numbers are the mass lost so far, not the mass.</param>
    public GroupSeries(IEnumerable<SeriesPoint> points, bool isLoss)
    {
        ArgumentNullException.ThrowIfNull(points);
        Points = [.. points.GroupBy(p => p.Time.Value).OrderBy(g => g.Key).Select(g => g.First())];
        IsLoss = isLoss;
    }

    /// <summary>The points in order of time.</summary>
    public IReadOnlyList<SeriesPoint> Points { get; }

    /// <summary>Whether the numbers are the mass lost so far.</summary>
    public bool IsLoss { get; }

    /// <summary>A group's points from those between and the readings that are the first and the last.</summary>
    /// <param name="series">The series.</param>
    /// <param name="between">The points between, by time in min.</param>
    /// <param name="readings">The group's readings.</param>
    public static GroupSeries Of(SeriesDefinition series, IEnumerable<(double Minutes, WrittenNumber Value)> between, IEnumerable<TakenReading> readings)
    {
        ArgumentNullException.ThrowIfNull(series);
        return new GroupSeries(
            [.. between.Select(p => new SeriesPoint(SeriesTable.TimeOf((decimal)p.Minutes, series), p.Value)), .. SeriesTable.Ends(series, [.. readings])], isLoss: false);
    }

    /// <summary>The same with what else was read at the first and the last time, where no point says so.</summary>
    internal GroupSeries With(IEnumerable<SeriesPoint> more) => IsLoss ? this : new GroupSeries([.. Points, .. more], IsLoss);
}
