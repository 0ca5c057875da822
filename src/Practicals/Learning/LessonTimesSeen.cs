using Calx.Measurement.Distributions;
using Calx.Measurement.Statistics;

namespace Calx.Practicals.Learning;

/// <summary>The times of one step in one lesson, as logarithms from the file's own.</summary>
internal sealed class LessonTimesSeen
{
    /// <summary>A group's time so many spreads from the lesson's median is no time of work: somebody forgot to say that it was done,
    /// or said it twice. Judgement.</summary>
    private const double FarSpreads = 6;

    /// <summary>Of fewer times none is far from the others.</summary>
    private const int FewestForFar = 4;

    private double spreadKept;
    private (double[] Level, double[] Odd, double Highest) kept;

    public LessonTimesSeen(PastLesson lesson, string step, TimePrior prior)
    {
        (School, ClassName) = (lesson.School, lesson.ClassName);
        double[] done = Near(Logs(lesson, step, prior, false), prior.Spread);
        Unfinished = Logs(lesson, step, prior, true);
        Done = done.Length;
        Mean = done.Length == 0 ? 0 : done.Average();
        Squares = done.Sum(x => (x - Mean) * (x - Mean));
    }

    public string School { get; }

    public string ClassName { get; }

    /// <summary>How many times groups finished, without those that lie far from the others.</summary>
    public int Done { get; }

    /// <summary>Mean of their logarithms.</summary>
    public double Mean { get; }

    /// <summary>Sum of the squares about it.</summary>
    public double Squares { get; }

    /// <summary>Logarithms of the times at which others were not done, ascending.</summary>
    public double[] Unfinished { get; }

    public int Groups => Done + Unfinished.Length;

    /// <summary>The likelihood at each mean of the lesson's own, by the largest; the same as an odd lesson has it at each mean of
    /// its class; and ln of the largest. The last spread's are kept.</summary>
    /// <param name="groups">Standard deviation of ln t between groups.</param>
    public (double[] Level, double[] Odd, double Highest) AtSpread(double groups)
    {
        if (spreadKept != groups)
        {
            double[] level = TimeCell.Levelled([.. Enumerable.Range(0, TimeGrid.Points).Select(i => LogAt(TimeGrid.At(i), groups))], out double highest);
            kept = (level, TimeGrid.Smoothed(level, TimeCell.OddSpread), highest);
            spreadKept = groups;
        }

        return kept;
    }

    private static double[] Near(double[] logs, double spread)
    {
        if (logs.Length < FewestForFar)
        {
            return logs;
        }

        double median = Summary.Median(logs);
        double far = FarSpreads * Math.Max(spread, Summary.MedianAbsoluteDeviation(logs));
        return [.. logs.Where(x => Math.Abs(x - median) <= far)];
    }

    private double LogAt(double mean, double groups)
    {
        double off = Mean - mean;
        double log = (-Done * Math.Log(groups)) - ((Squares + (Done * off * off)) / (2 * groups * groups));
        foreach (double end in Unfinished)
        {
            log += Math.Log(Math.Max(StandardNormal.UpperTail((end - mean) / groups), 1e-300));
        }

        return log;
    }

    // In ascending order: sums must not depend on that in which groups were written down.
    private static double[] Logs(PastLesson lesson, string step, TimePrior prior, bool atLeast) =>
    [
        .. lesson.Steps.Where(s => s.Step == step && s.IsAtLeast == atLeast)
            .Select(s => Math.Clamp(Math.Log(s.Minutes) - prior.LogMean, -TimeGrid.Reach, TimeGrid.Reach)).Order(),
    ];
}
