namespace Calx.Records.Lessons;

/// <summary>A teacher took over a number of a practical from past lessons, or took that back. Decisions are only ever added: the latest
/// on a number holds.</summary>
public sealed record NumberDecision
{
    /// <summary>Longest id or value of a number, or initials.</summary>
    public const int LongestText = 200;

    /// <summary>Most lessons that it may rest on.</summary>
    public const int MostLessons = 100_000;

    /// <summary>Takes a decision.</summary>
    /// <param name="practicalId">The practical.</param>
    /// <param name="practicalVersion">Its version, from 1: another version's numbers are other numbers.</param>
    /// <param name="className">The class that it is for; empty for all classes of the school.</param>
    /// <param name="number">Which number, such as <c>time:cool</c>.</param>
    /// <param name="was">Its value in the practical's file, in figures; minutes with spaces between.</param>
    /// <param name="became">The value that was accepted, in figures, or empty where it was taken back.</param>
    /// <param name="restsOn">What it rests on, for people; may be empty.</param>
    /// <param name="lessons">How many lessons it rests on, from 0.</param>
    /// <param name="initials">Who decided.</param>
    /// <param name="at">When.</param>
    /// <exception cref="ArgumentException">A text is blank or too long, or a number out of its range.</exception>
    public NumberDecision(
        string practicalId, int practicalVersion, string className, string number, string was, string became, string restsOn, int lessons, string initials, DateTimeOffset at)
    {
        PracticalId = KeptText.Needed(practicalId, Lesson.LongestName, nameof(practicalId));
        PracticalVersion = Given.AtLeast(1, practicalVersion, nameof(practicalVersion));
        ClassName = KeptText.MayBeEmpty(className, SchoolClass.LongestName, nameof(className));
        Number = KeptText.Needed(number, LongestText, nameof(number));
        Was = KeptText.Needed(was, LongestText, nameof(was));
        Became = KeptText.MayBeEmpty(became, LongestText, nameof(became));
        RestsOn = KeptText.MayBeEmpty(restsOn, LongestText, nameof(restsOn));
        ArgumentOutOfRangeException.ThrowIfGreaterThan(lessons, MostLessons);
        Lessons = Given.AtLeast(0, lessons, nameof(lessons));
        Initials = KeptText.Needed(initials, LongestText, nameof(initials));
        At = at;
    }

    /// <summary>The practical.</summary>
    public string PracticalId { get; }

    /// <summary>Its version.</summary>
    public int PracticalVersion { get; }

    /// <summary>The class that it is for, or empty for all of the school.</summary>
    public string ClassName { get; }

    /// <summary>Which number.</summary>
    public string Number { get; }

    /// <summary>Its value in the practical's file.</summary>
    public string Was { get; }

    /// <summary>The value that was accepted, or empty.</summary>
    public string Became { get; }

    /// <summary>What it rests on, or empty.</summary>
    public string RestsOn { get; }

    /// <summary>How many lessons it rests on.</summary>
    public int Lessons { get; }

    /// <summary>Who decided.</summary>
    public string Initials { get; }

    /// <summary>When.</summary>
    public DateTimeOffset At { get; }

    /// <summary>Whether an accepted value was taken back.</summary>
    public bool IsTakenBack => Became.Length == 0;

    /// <summary>The same at another time.</summary>
    internal NumberDecision DecidedAt(DateTimeOffset at) => new(PracticalId, PracticalVersion, ClassName, Number, Was, Became, RestsOn, Lessons, Initials, at);
}
