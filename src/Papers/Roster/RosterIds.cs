using System.Security.Cryptography;
using System.Text;
using Calx.Practicals.Marking;

namespace Calx.Papers.Roster;

/// <summary>
/// Ids of the things in a table for a school system, the same each time it is written: SHA-256 (FIPS 180-4) of what kind of thing it is and of
/// the names that tell it from others, so that marks given anew take the place of the older ones. What the system itself calls a
/// thing goes before.
/// </summary>
internal sealed class RosterIds(RosterAbout about)
{
    /// <summary>Between names: a sign that no name has.</summary>
    private const char Between = '\u001f';

    /// <summary>The lesson's marks as one item.</summary>
    public string LineItem => Of("lineItem", about.School, about.Lesson);

    /// <summary>The category of practical work.</summary>
    public string Category => Of("category", about.School);

    /// <summary>The class.</summary>
    public string Class => about.ClassSourcedId ?? Of("class", about.School, about.ClassName);

    /// <summary>The grading period.</summary>
    public string GradingPeriod => about.GradingPeriodSourcedId ?? Of("gradingPeriod", about.School);

    /// <summary>A student: what the school's system calls them, or what the name gives.</summary>
    public string Student(StudentWork work) => work.SourcedId ?? Of("user", about.School, work.Student);

    /// <summary>A student's result. An id lives longer than the spelling of a name.</summary>
    public string Result(StudentWork work) => Of("result", about.School, about.Lesson, work.SourcedId ?? work.Student);

    private static string Of(params ReadOnlySpan<string> names) =>
        Convert.ToHexStringLower(SHA256.HashData(Encoding.UTF8.GetBytes(string.Join(Between, names!).Normalize(NormalizationForm.FormC))));
}
