using System.Globalization;
using Calx.App.Pages.Classes;
using Calx.Records;
using Calx.Records.Lessons;

namespace Calx.App.Pages.Lessons;

/// <summary>What was filled in of a new lesson.</summary>
/// <param name="Class">Id of the class, or empty.</param>
/// <param name="Year">School year of a new class.</param>
/// <param name="Name">Name of a new class, or empty; where there is one, it is the class that is meant.</param>
/// <param name="Date">The day as the form has it.</param>
/// <param name="Room">The room; may be empty.</param>
/// <param name="Settings">How it is held.</param>
public sealed record NewLessonWords(string Class, string Year, string Name, string Date, string Room, LessonSettings Settings)
{
    /// <summary>Who teaches; may be empty.</summary>
    public string Teacher { get; init; } = "";

    /// <summary>The period; may be empty.</summary>
    public string Period { get; init; } = "";

    /// <summary>A form that nobody has filled in yet: today, an ordinary lesson in which students decide first.</summary>
    public static NewLessonWords Usual(DateOnly today) =>
        new("", SchoolYear.Of(today), "", Dates.ForField(today), "", new LessonSettings(Assessed: false, DecideFirst: true, Trial: false));

    /// <summary>Reads a form.</summary>
    public static NewLessonWords Of(FormFields form) => new(
        form["class"], NamesPasted.Clean(form["year"]), NamesPasted.Clean(form["name"]), form["date"], NamesPasted.Clean(form["room"]), SettingsOf(form))
    {
        Teacher = NamesPasted.Clean(form["teacher"]), Period = NamesPasted.Clean(form["period"]),
    };

    /// <summary>The settings of a form.</summary>
    public static LessonSettings SettingsOf(FormFields form) => new(form.IsTicked("assessed"), form.IsTicked("decide"), form.IsTicked("trial"));

    /// <summary>Whether a new class is named: the list has one chosen from the start, so what is typed says more.</summary>
    public bool IsNew => Name.Length > 0;

    /// <summary>The day, or null where it is none.</summary>
    public DateOnly? Day => DayOf(Date);

    /// <summary>Reads a day as a date field sends it.</summary>
    public static DateOnly? DayOf(string text) =>
        DateOnly.TryParseExact(text, "yyyy-MM-dd", CultureInfo.InvariantCulture, DateTimeStyles.None, out DateOnly day) ? day : null;

    /// <summary>What is wrong besides the class, or null.</summary>
    public string? Fault => Day is null ? $"'{Date}' is no day: a date such as 2026-11-25 is expected."
        : RoomFault(Room) is string room ? room
        : OtherFault(Teacher, Period) is string other ? other
        : IsNew ? ClassesRoutes.Fault(Year, Name)
        : Class.Length == 0 ? "Which class? Choose one, or name a new one."
        : RecordId.TryParse(Class, out _) ? null : "This class is not known. Choose one from the list.";

    /// <summary>Why a room is not taken, or null.</summary>
    public static string? RoomFault(string room) =>
        room.Length > Lesson.LongestName ? $"The room's name is too long: at most {Lesson.LongestName} characters." : null;

    /// <summary>Why a teacher's name or a period is not taken, or null.</summary>
    public static string? OtherFault(string teacher, string period) => teacher.Length > Lesson.LongestName || period.Length > Lesson.LongestName
        ? $"The {(teacher.Length > Lesson.LongestName ? "teacher's name" : "period")} is too long: at most {Lesson.LongestName} characters." : null;
}
