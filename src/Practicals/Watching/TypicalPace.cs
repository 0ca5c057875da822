using Calx.Practicals.Texts;

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

    private readonly OutlookTexts texts;

    private TypicalPace(double factor, double? seen, int groups, EngineLanguage language)
    {
        texts = new OutlookTexts(language);
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
    public string Sentence
    {
        get
        {
            if (Seen is not double seen)
            {
                return texts.NothingHeard;
            }

            (string percent, string heard, string factor) = ((100 * Math.Abs(seen - 1)).InFigures("F0"), Groups.InFigures(), Factor.InFigures("F2"));
            bool one = Groups == 1;
            return Math.Abs(seen - 1) < 0.05 ? one ? texts.AsPlannedOne : texts.AsPlanned(heard)
                : seen > 1 ? one ? texts.LongerOne(percent, factor) : texts.Longer(percent, heard, factor)
                : one ? texts.LessTimeOne(percent, factor) : texts.LessTime(percent, heard, factor);
        }
    }

    /// <summary>From the groups' ratios of actual to planned minutes: the median, drawn towards 1 in its logarithm by the share of
    /// groups heard among those and four at the plan's pace.</summary>
    internal static TypicalPace Of(IReadOnlyList<double> ratios, EngineLanguage language)
    {
        if (ratios.Count == 0)
        {
            return new TypicalPace(1, null, 0, language);
        }

        double[] sorted = [.. ratios.Order()];
        double median = (sorted[(sorted.Length - 1) / 2] + sorted[sorted.Length / 2]) / 2;
        double drawn = Math.Exp(sorted.Length / (sorted.Length + GroupsOfThePlan) * Math.Log(Math.Clamp(median, Fastest / 10, Slowest * 10)));
        return new TypicalPace(Math.Clamp(drawn, Fastest, Slowest), median, sorted.Length, language);
    }
}
