using System.Runtime.CompilerServices;
using Calx.Practicals.Definition;
using Calx.Practicals.Marking;
using Calx.Records.Lessons;
using Calx.Records.Storage;

namespace Calx.App.Live;

/// <summary>Marks the answers of lessons. What was marked last is kept until something of the lesson or its class changes.</summary>
public sealed class LessonMarking(RecordStore store)
{
    private readonly ConditionalWeakTable<LessonRoom, Last> known = [];

    /// <summary>Everything, marked.</summary>
    /// <param name="room">The lesson.</param>
    /// <param name="cancellation">Gives up.</param>
    public async Task<LessonMarks> Of(LessonRoom room, CancellationToken cancellation)
    {
        ArgumentNullException.ThrowIfNull(room);
        LessonView view = await room.Now(cancellation);
        IReadOnlyList<Member> members = await store.Members(room.Lesson.ClassId, cancellation);
        if (known.TryGetValue(room, out Last? last) && last.Marks.View.Number == view.Number && last.Marks.Members.SequenceEqual(members))
        {
            return last.Marks;
        }

        LessonMarks marks = await Task.Run(() => Mark(view, members, wordsAlone: false), cancellation);
        known.AddOrUpdate(room, new Last(marks));
        return marks;
    }

    /// <summary>Only the answers in words, which takes next to no time: for one after the other.</summary>
    /// <param name="room">The lesson.</param>
    /// <param name="cancellation">Gives up.</param>
    public async Task<LessonMarks> Words(LessonRoom room, CancellationToken cancellation)
    {
        ArgumentNullException.ThrowIfNull(room);
        LessonView view = await room.Now(cancellation);
        IReadOnlyList<Member> members = await store.Members(room.Lesson.ClassId, cancellation);
        return await Task.Run(() => Mark(view, members, wordsAlone: true), cancellation);
    }

    private static LessonMarks Mark(LessonView view, IReadOnlyList<Member> members, bool wordsAlone)
    {
        MarkingSettings settings = MarkingSettings.Of(view);
        var works = LessonWorks.Of(view, members);
        string[]? asked = wordsAlone ? [.. view.Practical.Sheet.Questions.Select(q => q.Id).Where(settings.Asks)] : [.. settings.Asked ?? All(view.Practical)];
        MarkedClass marked = new Marker(view.Practical, settings.Policy, settings.Sets, asked).Mark(works.Works, works.Overrulings);
        return new LessonMarks(view, members, settings, works, marked);
    }

    /// <summary>Where nothing was chosen, students are asked everything.</summary>
    private static IEnumerable<string> All(Practical practical) => [.. practical.AllAnswers.Select(a => a.Id), .. practical.Sheet.Questions.Select(q => q.Id)];

    private sealed record Last(LessonMarks Marks);
}
