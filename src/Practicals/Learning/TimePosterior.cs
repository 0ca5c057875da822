using Calx.Measurement.Distributions;
using Calx.Measurement.Uncertainty;
using Calx.Practicals.Definition;

namespace Calx.Practicals.Learning;

/// <summary>The posterior of the next class's mean logarithm, over a grid, for every pair of spreads.</summary>
internal sealed class TimePosterior(NextLesson next)
{
    /// <summary>Parts of less weight are left out of a group's law.</summary>
    private const double Least = 1e-6;

    private static readonly double[] LogPrior = [.. Enumerable.Range(0, TimeGrid.Points).Select(i => TimeRule.LogPrior(TimeGrid.At(i)))];

    private readonly List<(double Groups, double Variance, double Log, double[] Mass)> cells = [];

    /// <summary>Weighs one pair of spreads.</summary>
    public void Add(TimeCell cell, double logWeight, IReadOnlyList<LessonTimesSeen> seen)
    {
        double[] logs = [.. LogPrior];
        LessonTimesSeen[] same = [.. seen.Where(l => l.School == next.School && l.ClassName == next.ClassName)];
        foreach (var school in seen.GroupBy(l => l.School))
        {
            bool own = school.Key == next.School;
            double[] theirs = own ? logs : [.. LogPrior];
            foreach (var group in school.GroupBy(l => l.ClassName))
            {
                // The next lesson's own class comes last, at its own mean.
                if (!own || group.Key != next.ClassName)
                {
                    AddTo(theirs, cell.OfSchool([.. group]));
                }
            }

            logWeight += own ? 0 : LogWhole(theirs);
        }

        double[] mass = TimeCell.Levelled(logs, out double highest);
        double variance = cell.Lessons * cell.Lessons;
        if (same.Length > 0)
        {
            mass = TimeGrid.Smoothed(mass, cell.Half);
            double[] own = TimeCell.Levelled(cell.OfClass(same), out double most);
            mass = [.. mass.Select((x, i) => x * own[i])];
            highest += most;
            variance /= 2;
        }

        double whole = mass.Sum();
        if (whole > 0)
        {
            cells.Add((cell.Groups, variance + (cell.Groups * cell.Groups), logWeight + highest + Math.Log(whole), [.. mass.Select(x => x / whole)]));
        }
    }

    /// <summary>What is known, in minutes.</summary>
    public Timed Told(TimePrior prior, bool isLearned, int groups, int lessons)
    {
        double highest = cells.Max(c => c.Log);
        double total = cells.Sum(c => Math.Exp(c.Log - highest));
        (double Weight, double Groups, double Variance, double[] Mass)[] weighed =
            [.. cells.Select(c => (Math.Exp(c.Log - highest) / total, c.Groups, c.Variance, c.Mass))];
        double[] mass = new double[TimeGrid.Points];
        foreach (var cell in weighed)
        {
            for (int i = 0; i < mass.Length; i++)
            {
                mass[i] += cell.Weight * cell.Mass[i];
            }
        }

        double shift = mass.Select((m, i) => m * TimeGrid.At(i)).Sum();
        double spread = Math.Sqrt(weighed.Sum(c => c.Weight * c.Groups * c.Groups));
        StepMinutes minutes = isLearned ? prior.Moved(shift, spread) : prior.Minutes;
        double tail = (1 - TimeRule.Coverage) / 2;
        var mean = new CoverageInterval(
            prior.Minutes.Mean * Math.Exp(Quantile(mass, tail)), prior.Minutes.Mean * Math.Exp(Quantile(mass, 1 - tail)), TimeRule.Coverage);
        (double Weight, double At, double Deviation)[] parts = Parts(weighed);
        var one = new CoverageInterval(OneGroup(parts, prior, tail), OneGroup(parts, prior, 1 - tail), TimeRule.Coverage);
        return new Timed(minutes, mean, one, groups, lessons);
    }

    private static void AddTo(double[] logs, double[] more)
    {
        for (int i = 0; i < logs.Length; i++)
        {
            logs[i] += more[i];
        }
    }

    private static double LogWhole(double[] logs)
    {
        double[] level = TimeCell.Levelled(logs, out double highest);
        return highest + Math.Log(level.Sum());
    }

    private static (double Weight, double At, double Deviation)[] Parts((double Weight, double Groups, double Variance, double[] Mass)[] cells) =>
    [
        .. from c in cells
           where c.Weight > Least * 100
           from i in Enumerable.Range(0, TimeGrid.Points)
           where c.Weight * c.Mass[i] > Least
           select (c.Weight * c.Mass[i], TimeGrid.At(i), Math.Sqrt(c.Variance)),
    ];

    /// <summary>Where the grid's mass below is a share, each point's mass spread evenly about it.</summary>
    private static double Quantile(double[] mass, double p)
    {
        double below = 0;
        for (int i = 0; i < mass.Length; i++)
        {
            if (below + mass[i] >= p)
            {
                return TimeGrid.At(i) + (TimeGrid.Step * (((p - below) / mass[i]) - 0.5));
            }

            below += mass[i];
        }

        return TimeGrid.Reach;
    }

    private static double OneGroup((double Weight, double At, double Deviation)[] parts, TimePrior prior, double p)
    {
        double whole = parts.Sum(x => x.Weight);
        (double low, double high) = (-3 * TimeGrid.Reach, 3 * TimeGrid.Reach);
        while (high - low > 1e-4)
        {
            double middle = (low + high) / 2;
            bool isBelow = parts.Sum(x => x.Weight * StandardNormal.Cumulative((middle - x.At) / x.Deviation)) < p * whole;
            (low, high) = isBelow ? (middle, high) : (low, middle);
        }

        return Math.Exp(prior.LogMean + ((low + high) / 2));
    }
}
