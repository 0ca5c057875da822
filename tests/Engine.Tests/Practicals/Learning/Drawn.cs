using Calx.Measurement.Distributions;
using Calx.Practicals.Definition;
using Calx.Practicals.Learning;

namespace Calx.Engine.Tests.Practicals.Learning;

/// <summary>Past lessons for the tests.</summary>
internal static class Drawn
{
    public const string Step = "cool";

    public static readonly StepMinutes Cooling = new(7, 10, 20);

    public static readonly NextLesson NewClass = new("Larkmoor School", "9F", 12);

    /// <summary>A lesson of a class of its own in which groups took so many minutes for one step.</summary>
    public static PastLesson Timed(int number, IEnumerable<double> minutes, IEnumerable<double>? unfinished = null) => new(
        "Larkmoor School", $"class {number}",
        [.. minutes.Select(m => new StepSeen(Step, m)), .. (unfinished ?? []).Select(m => new StepSeen(Step, m, isAtLeast: true))], [], []);

    /// <summary>The same, with times as logarithms from the file's.</summary>
    public static PastLesson Logs(TimePrior prior, int number, double[] done, double[]? unfinished = null) => Timed(
        number, done.Select(x => Math.Exp(x + prior.LogMean)), (unfinished ?? []).Select(x => Math.Exp(x + prior.LogMean)));

    /// <summary>A lesson drawn about a school's mean.</summary>
    public static PastLesson Lesson(RandomStream stream, TimePrior prior, int number, double mean, double between, double groups, double bell = double.PositiveInfinity)
    {
        double own = mean + (between * stream.NextNormal());
        double[] logs = [.. Enumerable.Range(0, 12).Select(_ => own + (groups * stream.NextNormal()))];
        return Logs(prior, number, [.. logs.Where(x => x <= bell)], [.. logs.Where(x => x > bell).Select(_ => bell)]);
    }

    public static ClassCount Count(int number, int tried, double happened, string school = "Larkmoor School") =>
        new(school, $"class {number}", tried, happened);

    /// <summary>How often of so many.</summary>
    public static int Binomial(RandomStream stream, int tries, double rate) => Enumerable.Range(0, tries).Count(_ => stream.NextDouble() < rate);
}
