namespace Calx.Records.Lessons;

/// <summary>A lesson with the practical and the plan as they were when it was held: a later change of either does not reach it.</summary>
public sealed record Lesson
{
    /// <summary>Longest room, teacher, period or id of a practical.</summary>
    public const int LongestName = 80;

    /// <summary>Longest definition or plan in characters: those shipped have some 30,000, so more is a slip or an attack.</summary>
    public const int LongestSnapshot = 1_000_000;

    /// <summary>Most groups.</summary>
    public const int MostGroups = 99;

    /// <summary>Most minutes: a day.</summary>
    public const int MostMinutes = 1440;

    /// <summary>Takes a lesson.</summary>
    /// <param name="id">Its id.</param>
    /// <param name="classId">The class that has it.</param>
    /// <param name="practicalId">The practical.</param>
    /// <param name="practicalVersion">Its version, from 1.</param>
    /// <param name="practicalSource">The practical's definition as it was, YAML.</param>
    /// <param name="plan">The plan used, JSON; not read here.</param>
    /// <param name="date">The day.</param>
    /// <param name="room">The room; may be empty.</param>
    /// <param name="groups">How many groups, from 1 to <see cref="MostGroups"/>.</param>
    /// <param name="minutes">From its start to the bell, from 1 to <see cref="MostMinutes"/>.</param>
    /// <param name="settings">How it is held.</param>
    /// <param name="teacher">Who teaches; may be empty.</param>
    /// <param name="period">The period or the time, as the school says it; may be empty.</param>
    /// <exception cref="ArgumentException">A text is missing or too long, a number out of its range, or an id missing.</exception>
    public Lesson(
        RecordId id, RecordId classId, string practicalId, int practicalVersion, string practicalSource, string plan, DateOnly date, string room, int groups, int minutes, LessonSettings settings, string teacher = "", string period = "")
    {
        ArgumentNullException.ThrowIfNull(settings);
        ArgumentOutOfRangeException.ThrowIfGreaterThan(groups, MostGroups);
        ArgumentOutOfRangeException.ThrowIfGreaterThan(minutes, MostMinutes);
        (Id, ClassId) = (Given.Id(id, nameof(id)), Given.Id(classId, nameof(classId)));
        PracticalId = KeptText.Needed(practicalId, LongestName, nameof(practicalId));
        PracticalVersion = Given.AtLeast(1, practicalVersion, nameof(practicalVersion));
        PracticalSource = KeptText.Needed(practicalSource, LongestSnapshot, nameof(practicalSource));
        Plan = KeptText.Needed(plan, LongestSnapshot, nameof(plan));
        Date = date;
        Room = KeptText.MayBeEmpty(room, LongestName, nameof(room));
        (Groups, Minutes) = (Given.AtLeast(1, groups, nameof(groups)), Given.AtLeast(1, minutes, nameof(minutes)));
        Settings = settings;
        Teacher = KeptText.MayBeEmpty(teacher, LongestName, nameof(teacher));
        Period = KeptText.MayBeEmpty(period, LongestName, nameof(period));
    }

    /// <summary>Its id.</summary>
    public RecordId Id { get; }

    /// <summary>The class that has it.</summary>
    public RecordId ClassId { get; }

    /// <summary>The practical.</summary>
    public string PracticalId { get; }

    /// <summary>The practical's version.</summary>
    public int PracticalVersion { get; }

    /// <summary>The practical's definition as it was, YAML.</summary>
    public string PracticalSource { get; }

    /// <summary>The plan used, JSON.</summary>
    public string Plan { get; }

    /// <summary>The day.</summary>
    public DateOnly Date { get; }

    /// <summary>The room, or empty.</summary>
    public string Room { get; }

    /// <summary>How many groups.</summary>
    public int Groups { get; }

    /// <summary>From its start to the bell.</summary>
    public int Minutes { get; }

    /// <summary>How it is held.</summary>
    public LessonSettings Settings { get; }

    /// <summary>Who teaches, or empty.</summary>
    public string Teacher { get; }

    /// <summary>The period or the time, or empty.</summary>
    public string Period { get; }
}
