using System.Globalization;
using Calx.App.Learning;
using Calx.Measurement.Numbers;
using Calx.Measurement.Uncertainty;
using Calx.Practicals.Definition;
using Calx.Practicals.Learning;

namespace Calx.App.Pages.Learning;

/// <summary>A learned number for people.</summary>
public static class NumberWords
{
    /// <summary>Before and after: '10, 12, 20 min' or '8 %'.</summary>
    public static string Value(string kept) => NumberText.MinutesOf(kept) is StepMinutes minutes
        ? $"{NumberText.Minutes(minutes.Least)}, {NumberText.Minutes(minutes.Likely)}, {NumberText.Minutes(minutes.Most)} min"
        : NumberText.ShareOf(kept) is double share ? Percent(share) : kept;

    /// <summary>How surely it is known, and what it means for the next lesson.</summary>
    public static string Surely(LearnedChange change) => change switch
    {
        LearnedChange.Time time => $"On average {NumberText.Minutes(time.After.Mean)} min, in the file {NumberText.Minutes(time.Before.Mean)}; 90 % interval {Between(time.MeanInMinutes, NumberText.Minutes)}. One group in the next lesson: {Between(time.OneGroupInMinutes, NumberText.Minutes)} min.",
        LearnedChange.Rate { IsBreakage: true } kit => $"90 % interval: {Between(kit.Interval, Percent)}. In the next lesson: {Count(kit.NextLesson, "piece", "pieces")}.",
        LearnedChange.Rate rate => $"90 % interval: {Between(rate.Interval, Percent)}. In the next lesson: {Count(rate.NextLesson, "group", "groups")}.",
        _ => throw new ArgumentException("No other change exists.", nameof(change)),
    };

    /// <summary>What kind of number it is.</summary>
    public static string Kind(LearnedChange change) => change switch
    {
        LearnedChange.Time => "least, likely and most time",
        LearnedChange.Rate { IsBreakage: true } => "share of the pieces that break in a lesson",
        _ => "share of the groups",
    };

    private static string Between(CoverageInterval interval, Func<double, string> figure) => $"{figure(interval.Low)} to {figure(interval.High)}";

    private static string Percent(double share)
    {
        double percent = 100 * share;
        return percent.ToString(percent < 10 ? "0.#" : "0", CultureInfo.InvariantCulture) + " %";
    }

    private static string Count(CoverageInterval count, string one, string some)
    {
        (double low, double high) = (count.Low, count.High);
        string most = high.ToString("0", CultureInfo.InvariantCulture);
        return low == high ? $"{(high == 0 ? "no" : most)} {(high == 1 ? one : some)}" : $"{low.ToString("0", CultureInfo.InvariantCulture)} to {most} {some}";
    }
}
