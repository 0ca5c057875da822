using Calx.Practicals.Definition;

namespace Calx.Practicals.Learning;

/// <summary>
/// How long a step takes, from times of groups: file, school, class, lesson, normal on the scale of the logarithm
/// (docs/methods/learning.md). Spreads are integrated by quadrature without random numbers.
/// </summary>
internal static class TimeRule
{
    /// <summary>The spread between groups in the file counts as if it had been seen in so many: judgement.</summary>
    public const double FileGroups = 10;

    /// <summary>Scale of the law of a school's mean about the file's, Student's t: a quarter more or less is usual. Judgement.</summary>
    public const double FileScale = 0.25;

    /// <summary>Its degrees of freedom: few, so that many lessons can outvote a file that is far off.</summary>
    public const double FileDegrees = 4;

    /// <summary>Scale of the half-normal law of the spread between lessons: judgement.</summary>
    public const double LessonScale = 0.2;

    public const double Coverage = 0.9;

    private const int LessonSpreads = 20;
    private const double MostLessonSpread = 1;
    private const double FirstLessonSpread = 0.03;
    private const int GroupSpreads = 9;

    /// <summary>What is learned of a step.</summary>
    public static Timed Of(StepMinutes file, string step, IReadOnlyList<PastLesson> lessons, NextLesson next)
    {
        var prior = new TimePrior(file);
        LessonTimesSeen[] seen =
        [
            .. lessons.Select(l => new LessonTimesSeen(l, step, prior)).Where(l => l.Groups > 0)
                .OrderBy(l => l.School, StringComparer.Ordinal).ThenBy(l => l.ClassName, StringComparer.Ordinal)
                .ThenBy(l => l.Mean).ThenBy(l => l.Squares).ThenBy(l => l.Done)
                .ThenBy(l => l.Unfinished.Length).ThenBy(l => l.Unfinished.Sum()),
        ];
        var posterior = new TimePosterior(next);
        foreach ((double groups, double weight) in SpreadsOfGroups(prior, seen))
        {
            foreach ((double between, double height) in SpreadsOfLessons())
            {
                posterior.Add(new TimeCell(groups, between), weight + height, seen);
            }
        }

        LessonTimesSeen[] own = [.. seen.Where(l => l.School == next.School)];
        return posterior.Told(prior, seen.Length > 0, own.Sum(l => l.Groups), own.Length);
    }

    /// <summary>ln of the prior at a mean of the school.</summary>
    public static double LogPrior(double mean) =>
        -0.5 * (FileDegrees + 1) * Math.Log(1 + (mean * mean / (FileScale * FileScale * FileDegrees)));

    /// <summary>Spreads between groups about the likeliest, with ln of their prior (a scaled inverse chi-squared law of the variance).</summary>
    private static IEnumerable<(double Spread, double LogWeight)> SpreadsOfGroups(TimePrior prior, LessonTimesSeen[] seen)
    {
        double degrees = FileGroups + seen.Sum(l => Math.Max(0, l.Done - 1));
        double squares = FileGroups * prior.Spread * prior.Spread;
        double likeliest = Math.Sqrt((squares + seen.Sum(l => l.Squares)) / degrees);
        for (int k = -GroupSpreads / 2; k <= GroupSpreads / 2; k++)
        {
            double spread = likeliest * Math.Exp(k / Math.Sqrt(2 * degrees));
            yield return (spread, (-FileGroups * Math.Log(spread)) - (squares / (2 * spread * spread)));
        }
    }

    private static IEnumerable<(double Spread, double LogWeight)> SpreadsOfLessons()
    {
        double step = Math.Asinh(MostLessonSpread / FirstLessonSpread) / (LessonSpreads - 1);
        for (int j = 0; j < LessonSpreads; j++)
        {
            double spread = FirstLessonSpread * Math.Sinh(j * step);
            double end = j is 0 or LessonSpreads - 1 ? 0.5 : 1;
            yield return (spread, Math.Log(end * Math.Cosh(j * step)) - (0.5 * spread * spread / (LessonScale * LessonScale)));
        }
    }
}
