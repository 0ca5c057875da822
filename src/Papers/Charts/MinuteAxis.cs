using System.Globalization;

namespace Calx.Papers.Charts;

/// <summary>Minutes of a lesson from left to right, with ticks where a clock has them.</summary>
internal sealed class MinuteAxis(double last, double from, double to)
{
    /// <summary>Steps that a clock has, in min.</summary>
    private static readonly double[] Steps = [5, 10, 15, 30, 60];

    private const int MostTicks = 16;

    /// <summary>From tick to tick.</summary>
    public double Step { get; } = Steps.FirstOrDefault(s => last / s < MostTicks, 120);

    /// <summary>Where the axis ends on paper.</summary>
    public double End => to;

    /// <summary>The ticks from 0 on.</summary>
    public IEnumerable<double> Ticks => Enumerable.Range(0, (int)(last / Step) + 1).Select(i => i * Step);

    /// <summary>Where a minute lies on paper.</summary>
    public double At(double minute) => from + (minute / last * (to - from));

    /// <summary>A minute's text, to a whole one.</summary>
    public static string TextOf(double minute) => Math.Round(minute).ToString(CultureInfo.InvariantCulture);
}
