using Calx.Records.Journal;

namespace Calx.Records.Storage;

/// <summary>Cover lessons.</summary>
public sealed partial class RecordStore
{
    /// <summary>Ids of the lessons that are cover lessons, without reading their journals whole.</summary>
    /// <param name="cancel">Gives up.</param>
    public async Task<IReadOnlySet<RecordId>> CoverLessons(CancellationToken cancel = default)
    {
        // The words stand in the statement as in the index, which is found by them.
        List<(RecordId Lesson, string What, string Text)> turns = await Read(
            $"SELECT lesson_id, what, value FROM entry WHERE school = @school AND kind = 'happening' AND what IN ('{CoverActs.Began}', '{CoverActs.Cover}') AND group_number = 0 ORDER BY lesson_id, number",
            row => (row.Id(0), row.GetString(1), row.GetString(2)),
            cancel);
        return turns.GroupBy(t => t.Lesson)
            .Where(lesson => lesson.TakeWhile(t => t.What != CoverActs.Began).LastOrDefault().Text == CoverActs.Yes)
            .Select(lesson => lesson.Key).ToHashSet();
    }
}
