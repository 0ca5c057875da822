using Calx.Papers.Texts;

namespace Calx.Papers.Roster;

/// <summary>What a school system has to be told of the marks of a lesson. The library has no clock: days come from outside.</summary>
/// <param name="School">The school, as it is called; may be empty.</param>
/// <param name="ClassName">The class, as it is called; may be empty.</param>
/// <param name="Lesson">What tells this lesson from the school's others: the same text each time its marks are written.</param>
/// <param name="Title">What the marks are for.</param>
/// <param name="Held">The day of the lesson.</param>
/// <param name="Marked">When the marks were given.</param>
public sealed record RosterAbout(string School, string ClassName, string Lesson, string Title, DateOnly Held, DateTimeOffset Marked)
{
    /// <summary>What the school's system calls the class, or null where that is not known.</summary>
    public string? ClassSourcedId { get; init; }

    /// <summary>What the school's system calls the term or grading period, or null where that is not known.</summary>
    public string? GradingPeriodSourcedId { get; init; }

    /// <summary>The language of the category's name.</summary>
    public PaperLanguage Language { get; init; } = PaperLanguage.BritishEnglish;
}
