using Calx.Records.Journal;

namespace Calx.Records.Storage;

/// <summary>Says of each entry of a group whether it is new, known or refused, and numbers the new ones.</summary>
/// <param name="ends">How long each lesson's journal is; goes up with each entry added.</param>
/// <param name="known">Entries that have one of the group's ids; grows with each entry added.</param>
/// <param name="now">When they are received.</param>
internal sealed class EntryJudge(Dictionary<RecordId, long> ends, Dictionary<EntryId, (RecordId Lesson, KeptEntry Kept)> known, DateTimeOffset now)
{
    private readonly List<(RecordId Lesson, KeptEntry Kept)> added = [];

    public IReadOnlyList<(RecordId Lesson, KeptEntry Kept)> Added => added;

    public AppendResult Judge(WaitingEntry one)
    {
        if (known.TryGetValue(one.Entry.Id, out (RecordId Lesson, KeptEntry Kept) first))
        {
            return first.Lesson == one.Lesson && first.Kept.Entry == one.Entry
                ? new AppendResult.Known(first.Kept)
                : new AppendResult.Refused(LessonJournal.IdTaken);
        }

        if (!ends.TryGetValue(one.Lesson, out long end))
        {
            return new AppendResult.Refused("This lesson is not kept here, or no longer: nothing can be added to it.");
        }

        var kept = new KeptEntry(one.Entry, end + 1, now);
        ends[one.Lesson] = kept.Number;
        known.Add(one.Entry.Id, (one.Lesson, kept));
        added.Add((one.Lesson, kept));
        return new AppendResult.Added(kept);
    }
}
