using Calx.App.Pages.Practicals;
using Calx.Practicals.Definition;
using Calx.Records;
using Calx.Records.Lessons;
using Calx.Records.Storage;

namespace Calx.App.Pages.Lessons;

/// <summary>Lessons for lists, with their class and the title of their practical.</summary>
public sealed class LessonList(RecordStore store, Shelf shelf)
{
    /// <summary>All lessons, the latest first.</summary>
    public async Task<IReadOnlyList<LessonRow>> All(CancellationToken cancellation)
    {
        Dictionary<RecordId, SchoolClass> classes = (await store.Classes(cancellation)).ToDictionary(c => c.Id);
        return Rows(await store.Lessons(cancellation), classes, await store.CoverLessons(cancellation));
    }

    /// <summary>The lessons of a class, the latest first.</summary>
    public async Task<IReadOnlyList<LessonRow>> Of(SchoolClass one, CancellationToken cancellation) =>
        Rows(await store.LessonsOf(one.Id, cancellation), new Dictionary<RecordId, SchoolClass> { [one.Id] = one }, await store.CoverLessons(cancellation));

    private LessonRow[] Rows(IReadOnlyList<Lesson> lessons, Dictionary<RecordId, SchoolClass> classes, IReadOnlySet<RecordId> covers)
    {
        var titles = new Dictionary<string, string>(StringComparer.Ordinal);
        return
        [
            .. lessons.Where(l => classes.ContainsKey(l.ClassId)).OrderByDescending(l => l.Date)
                .Select(l => new LessonRow(l, classes[l.ClassId], Title(l, titles), covers.Contains(l.Id))),
        ];
    }

    /// <summary>Of a practical that is not at hand any more, the title that the lesson itself keeps.</summary>
    private string Title(Lesson lesson, Dictionary<string, string> titles) => titles.TryGetValue(lesson.PracticalId, out string? known)
        ? known
        : titles[lesson.PracticalId] = (shelf.Find(lesson.PracticalId) ?? PracticalReader.Read(lesson.PracticalSource, lesson.PracticalId).Practical)?.Title ?? lesson.PracticalId;
}
