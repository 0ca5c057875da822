namespace Calx.Records.Journal;

/// <summary>
/// Happenings of a whole lesson (group 0) that say whether it is a cover lesson, one without practical work: the last that came before the lesson
/// began decides. In a journal, so that who turned it, when, and back again all stay to be seen.
/// </summary>
public static class CoverActs
{
    /// <summary>The lesson is turned into a cover lesson: yes or no.</summary>
    public const string Cover = "cover";

    /// <summary>The lesson begins: from now on it stays what it is.</summary>
    public const string Began = "began";

    /// <summary>The text that says yes.</summary>
    public const string Yes = "yes";
}
