using Calx.Practicals.Texts;

namespace Calx.Practicals.Learning;

/// <summary>The lesson for which something is to be learned.</summary>
public sealed class NextLesson
{
    /// <summary>Takes a lesson.</summary>
    /// <param name="school">Its school, as past lessons name it.</param>
    /// <param name="className">Its class; where no past lesson names it, it is a new class of the school.</param>
    /// <param name="groups">How many groups there will be, 1 to 1000.</param>
    /// <param name="language">The language of the sentences; British where nothing else is said.</param>
    /// <exception cref="ArgumentOutOfRangeException">There are no groups, or too many.</exception>
    public NextLesson(string school, string className, int groups, EngineLanguage? language = null)
    {
        ArgumentNullException.ThrowIfNull(school);
        ArgumentNullException.ThrowIfNull(className);
        ArgumentOutOfRangeException.ThrowIfNegativeOrZero(groups);
        ArgumentOutOfRangeException.ThrowIfGreaterThan(groups, 1000);
        (School, ClassName, Groups, Language) = (school, className, groups, language ?? EngineLanguage.British);
    }

    /// <summary>Its school.</summary>
    public string School { get; }

    /// <summary>Its class.</summary>
    public string ClassName { get; }

    /// <summary>How many groups there will be.</summary>
    public int Groups { get; }

    /// <summary>The language of the sentences.</summary>
    public EngineLanguage Language { get; }
}
