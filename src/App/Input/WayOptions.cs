using System.Globalization;
using Calx.Practicals.Clock;
using Calx.Practicals.Planning;

namespace Calx.App.Input;

/// <summary>A way out as options of <c>calx plan</c>, so that it can be typed.</summary>
internal static class WayOptions
{
    /// <summary>The options that make one plan of another, in the order of the help page.</summary>
    public static string Of(PlanSettings from, PlanSettings to)
    {
        string[] options =
        [
            .. Changed("--groups", from.Groups, to.Groups),
            .. to.Students == 2 * to.Groups && from.Students == 2 * from.Groups ? [] : Changed("--students", from.Students, to.Students, always: from.Groups != to.Groups),
            .. Balances(from, to),
            .. Changed("--minutes", from.Minutes, to.Minutes),
            .. Changed("--mass", from.SampleInGrams, to.SampleInGrams),
            .. Changed("--trials", from.Trials, to.Trials),
            .. Changed("--heatings", from.Heatings, to.Heatings),
            .. to.Prepared && !from.Prepared ? ["--technician-prepares"] : Array.Empty<string>(),
            .. to.LeftOut.Except(from.LeftOut).Select(word => $"--without {word}"),
            .. to.Moved.Except(from.Moved).Select(step => $"--move {step}"),
            .. to.Alongside.Except(from.Alongside).Select(step => $"--alongside {step}"),
            .. Changed("--stagger", from.StaggerInMinutes, to.StaggerInMinutes),
        ];
        return string.Join(' ', options);
    }

    private static string[] Changed(string option, double from, double to, bool always = false) =>
        from == to && !always ? [] : [string.Create(CultureInfo.InvariantCulture, $"{option} {to:0.######}")];

    private static IEnumerable<string> Balances(PlanSettings from, PlanSettings to)
    {
        double[] before = [.. from.Balances.Select(b => b.ResolutionInGrams)];
        double[] after = [.. to.Balances.Select(b => b.ResolutionInGrams)];
        if (before.SequenceEqual(after))
        {
            return [];
        }

        string[] steps = [.. after.Distinct().Select(step => string.Create(CultureInfo.InvariantCulture, $"--resolution {step:0.########}"))];
        bool alike = steps.Length == 1;
        return alike
            ? [string.Create(CultureInfo.InvariantCulture, $"--balances {after.Length}"), .. before.Distinct().Count() > 1 ? steps : []]
            : after.Select(step => string.Create(CultureInfo.InvariantCulture, $"--resolution {step:0.########}"));
    }
}
