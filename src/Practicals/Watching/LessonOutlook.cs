using Calx.Practicals.Clock;
using Calx.Practicals.Texts;

namespace Calx.Practicals.Watching;

/// <summary>How the lesson goes on from where its groups are: the plan's clock, run on from now (docs/methods/watching.md).</summary>
public sealed class LessonOutlook
{
    internal LessonOutlook(
        LessonMoment moment,
        OutlookCounts counts,
        LastCalls calls,
        TypicalPace pace,
        IReadOnlyList<GroupOutlook> groups,
        string bottleneck)
    {
        Moment = moment;
        Lessons = counts.Lessons;
        Fits = counts.Fits;
        OnTime = counts.OnTime;
        GasOffInTime = counts.GasOffInTime;
        WeighedInTime = counts.WeighedInTime;
        End = counts.End;
        Calls = calls;
        Pace = pace;
        Groups = groups;
        Bottleneck = bottleneck;
    }

    /// <summary>The moment.</summary>
    public LessonMoment Moment { get; }

    /// <summary>Whether a flame burns in it.</summary>
    internal bool HasFlame { get; init; }

    /// <summary>How many lessons were simulated.</summary>
    public int Lessons { get; }

    /// <summary>Probability that everything is done by the bell and every flame is out in time before it.</summary>
    public Share Fits { get; }

    /// <summary>Probability that everything is done by the bell.</summary>
    public Share OnTime { get; }

    /// <summary>Probability that every flame is out as long before the bell as the practical asks.</summary>
    public Share GasOffInTime { get; }

    /// <summary>Probability that the last reading is taken by the minute at which packing begins.</summary>
    public Share WeighedInTime { get; }

    /// <summary>When everything is done, what the class does together at the end included.</summary>
    public MinuteRange End { get; }

    /// <summary>When to begin nothing more, with this bell and at this pace.</summary>
    public LastCalls Calls { get; }

    /// <summary>How fast the class works beside its plan.</summary>
    public TypicalPace Pace { get; }

    /// <summary>Each group, in the order of their numbers.</summary>
    public IReadOnlyList<GroupOutlook> Groups { get; }

    /// <summary>What keeps the rest of the lesson longest, one sentence.</summary>
    public string Bottleneck { get; }

    /// <summary>The group that the end most often waits for, where no queue matters more; else null.</summary>
    public int? WaitsFor { get; internal init; }

    /// <summary>The language of its sentences.</summary>
    internal EngineLanguage Language { get; init; } = EngineLanguage.British;

    /// <summary>What a teacher is to read first, a sentence each: the bell, the chance, the last call, what it waits for.</summary>
    /// <param name="whereIs">Where a group is, by its number, in the words that stand on its tile; null where that says nothing. The
    /// forecast may be some seconds older than what was heard of the group, and guesses what nobody said; the tile does not.</param>
    public IReadOnlyList<string> SentencesWith(Func<int, string?> whereIs)
    {
        ArgumentNullException.ThrowIfNull(whereIs);
        return OutlookWords.Of(this, whereIs);
    }
}
