using System.Globalization;

namespace Calx.Practicals.Watching;

/// <summary>How fast the class works beside its plan.</summary>
public sealed class TypicalPace
{
    /// <summary>Minutes of the plan from which a stretch counts: a short one tells of a single step (judgement).</summary>
    internal const double LeastMinutes = 5;

    /// <summary>As many groups at the plan's own pace are taken to have been heard as well (judgement): with four groups heard the
    /// class's pace counts half.</summary>
    private const double GroupsOfThePlan = 4;

    /// <summary>No class is taken for faster or slower than this.</summary>
    private const double Fastest = 0.5;
    private const double Slowest = 2;

    private TypicalPace(double factor, double? seen, int groups)
    {
        Factor = factor;
        Seen = seen;
        Groups = groups;
    }

    /// <summary>How many times as long as planned what is left is taken to last, cooling apart; 0.5 to 2, and 1 where nothing was
    /// heard.</summary>
    public double Factor { get; }

    /// <summary>The middle of the groups' actual minutes over the planned ones, as heard; null where nothing was.</summary>
    public double? Seen { get; }

    /// <summary>How many groups it was heard from.</summary>
    public int Groups { get; }

    /// <summary>The same for the teacher.</summary>
    public string Sentence => Seen is not double seen
        ? "Nothing has been heard yet of how fast the class works."
        : Math.Abs(seen - 1) < 0.05
            ? $"The class works as fast as planned ({Heard})."
            : string.Create(
                CultureInfo.InvariantCulture,
                $"The class takes {100 * Math.Abs(seen - 1):F0} % {(seen > 1 ? "longer" : "less time")} than planned ({Heard}); "
                + $"what is left is taken to last {Factor:F2} times as long.");

    private string Heard => Groups == 1 ? "one group heard" : string.Create(CultureInfo.InvariantCulture, $"{Groups} groups heard");

    /// <summary>From the groups' ratios of actual to planned minutes: the median, drawn towards 1 in its logarithm by the share of
    /// groups heard among those and four at the plan's pace.</summary>
    internal static TypicalPace Of(IReadOnlyList<double> ratios)
    {
        if (ratios.Count == 0)
        {
            return new TypicalPace(1, null, 0);
        }

        double[] sorted = [.. ratios.Order()];
        double median = (sorted[(sorted.Length - 1) / 2] + sorted[sorted.Length / 2]) / 2;
        double drawn = Math.Exp(sorted.Length / (sorted.Length + GroupsOfThePlan) * Math.Log(Math.Clamp(median, Fastest / 10, Slowest * 10)));
        return new TypicalPace(Math.Clamp(drawn, Fastest, Slowest), median, sorted.Length);
    }
}
