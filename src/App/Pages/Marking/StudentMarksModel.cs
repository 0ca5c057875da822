using Calx.App.Live;
using Calx.Practicals.Marking;

namespace Calx.App.Pages.Marking;

/// <summary>One student's answers.</summary>
/// <param name="Marking">The answers of the class.</param>
/// <param name="Work">What this student handed in.</param>
/// <param name="Marked">Its marks.</param>
/// <param name="Before">Number of the student before, or null.</param>
/// <param name="Next">Number of the next student, or null.</param>
public sealed record StudentMarksModel(MarkingModel Marking, LessonWork Work, MarkedWork Marked, int? Before, int? Next)
{
    /// <summary>The student of a number in the class, or null where there is nothing of them to be marked.</summary>
    public static StudentMarksModel? Of(MarkingModel marking, int member)
    {
        ArgumentNullException.ThrowIfNull(marking);
        (LessonWork Work, MarkedWork Marked)[] all = [.. marking.Marks.Each];
        int place = Array.FindIndex(all, e => e.Work.Member.Number == member);
        return place < 0 ? null : new StudentMarksModel(
            marking,
            all[place].Work,
            all[place].Marked,
            place > 0 ? all[place - 1].Work.Member.Number : null,
            place < all.Length - 1 ? all[place + 1].Work.Member.Number : null);
    }
}
