using Calx.App.Live;
using Calx.App.Pages.Lessons;
using Calx.Records.Lessons;

namespace Calx.App.Pages.Marking;

/// <summary>A lesson's answers, for every page of its marking.</summary>
/// <param name="Marks">The answers, marked.</param>
/// <param name="Class">The class.</param>
/// <param name="Said">What was done or is wrong.</param>
public sealed record MarkingModel(LessonMarks Marks, SchoolClass Class, PageSaid Said)
{
    /// <summary>The lesson.</summary>
    public Lesson Lesson => Marks.View.Room.Lesson;

    /// <summary>Address of the class view; the other pages are below it.</summary>
    public string Address => $"/lessons/{Lesson.Id}/marking";

    /// <summary>How many answers in words wait for the teacher.</summary>
    public int Waiting { get; } = new AnswersInWords(Marks, null).Waiting;
}
