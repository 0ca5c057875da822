using System.Globalization;
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

    /// <summary>How many other answers could not be read or marked, so that a person has to look at them.</summary>
    public int Unread { get; } = Marks.Class.Works.Sum(w => w.Unread);

    /// <summary>What waits for the teacher, in a sentence or two.</summary>
    public string Left => this switch
    {
        { Waiting: 0, Unread: 0 } => "Nothing waits for you.",
        { Waiting: 0 } => $"{UnreadInWords}.",
        { Unread: 0 } => $"{WaitingInWords}.",
        _ => $"{WaitingInWords}. {UnreadInWords}.",
    };

    private string WaitingInWords => Waiting == 1 ? "One answer in words waits for you" : string.Create(CultureInfo.InvariantCulture, $"{Waiting} answers in words wait for you");

    private string UnreadInWords => Unread == 1 ? "One other answer could not be read or marked: please look at it" : string.Create(CultureInfo.InvariantCulture, $"{Unread} other answers could not be read or marked: please look at them");
}
