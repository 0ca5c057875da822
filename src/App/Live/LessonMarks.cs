using Calx.Practicals.Marking;
using Calx.Records.Lessons;

namespace Calx.App.Live;

/// <summary>The answers of a lesson, marked as they are at one place of its journal.</summary>
/// <param name="View">The lesson.</param>
/// <param name="Members">Its class.</param>
/// <param name="Settings">How it is marked.</param>
/// <param name="Works">What was handed in.</param>
/// <param name="Class">The marks; works in the same order as in <paramref name="Works"/>.</param>
public sealed record LessonMarks(LessonView View, IReadOnlyList<Member> Members, MarkingSettings Settings, LessonWorks Works, MarkedClass Class)
{
    /// <summary>Each student with what was handed in and its marks.</summary>
    public IEnumerable<(LessonWork Work, MarkedWork Marked)> Each => Works.Each.Zip(Class.Works);
}
