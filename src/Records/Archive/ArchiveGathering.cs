using System.Data.Common;
using Calx.Records.Journal;
using Calx.Records.Lessons;
using Calx.Records.Storage;

namespace Calx.Records.Archive;

/// <summary>Gathers what goes into an archive, in an order that depends on nothing but the records: databases sort texts by rules of
/// their own, so the sorting is done here.</summary>
internal sealed class ArchiveGathering(Session session, CancellationToken cancel)
{
    private readonly ArchiveContent content = new();

    /// <summary>A lesson with its class and the balances that its readings name; null where there is no such lesson.</summary>
    public async Task<ArchiveContent?> OfLesson(RecordId lessonId)
    {
        (string, object?) id = ("id", lessonId.ToString());
        if ((await Rows("lesson", RecordRows.Lesson, RecordRows.LessonOf, "id = @id", id)) is not [Lesson lesson])
        {
            return null;
        }

        content.Lessons.Add(new ArchivedLesson(lesson, await Journal(lesson)));
        await AddClasses("id = @class", "class_id = @class", ("class", lesson.ClassId.ToString()));
        HashSet<string> letters = [.. content.Lessons[0].Journal.Select(k => (k.Entry.Content as EntryContent.Reading)?.Balance).OfType<string>()];
        await AddBalances(b => letters.Contains(b.Letter));
        await AddSignatures(s => s.PracticalId == lesson.PracticalId && s.PracticalVersion == lesson.PracticalVersion);
        return content;
    }

    /// <summary>Everything of the school.</summary>
    public async Task<ArchiveContent> OfAll()
    {
        await AddClasses("0 = 0", "0 = 0");
        await AddBalances(_ => true);
        await AddSignatures(_ => true);
        await AddDecisions();
        List<Lesson> lessons = await Rows("lesson", RecordRows.Lesson, RecordRows.LessonOf, "0 = 0");
        foreach (Lesson lesson in lessons.OrderBy(l => l.Date).ThenBy(l => l.Id.ToString(), StringComparer.Ordinal))
        {
            content.Lessons.Add(new ArchivedLesson(lesson, await Journal(lesson)));
        }

        return content;
    }

    private Task<List<KeptEntry>> Journal(Lesson lesson) =>
        Rows("entry", EntryRow.Selected, EntryRow.Read, "lesson_id = @lesson ORDER BY number", ("lesson", lesson.Id.ToString()));

    private async Task AddClasses(string classes, string members, params (string Name, object? Value)[] values)
    {
        content.Classes.AddRange((await Rows("class", RecordRows.Class, RecordRows.ClassOf, classes, values))
            .OrderBy(c => c.Id.ToString(), StringComparer.Ordinal));
        content.Members.AddRange((await Rows("member", RecordRows.Member, RecordRows.MemberOf, members, values))
            .OrderBy(m => m.ClassId.ToString(), StringComparer.Ordinal).ThenBy(m => m.Number));
    }

    private async Task AddBalances(Func<KeptBalance, bool> wanted)
    {
        content.Balances.AddRange((await Rows("balance", RecordRows.Balance, RecordRows.BalanceOf, "0 = 0"))
            .Where(wanted).OrderBy(b => b.Id.ToString(), StringComparer.Ordinal));
        HashSet<RecordId> ids = [.. content.Balances.Select(b => b.Id)];
        content.Checks.AddRange((await Rows("balance_check", RecordRows.Check, RecordRows.CheckOf, "0 = 0"))
            .Where(c => ids.Contains(c.BalanceId))
            .OrderBy(c => c.BalanceId.ToString(), StringComparer.Ordinal).ThenBy(c => c.At).ThenBy(c => c.Id.ToString(), StringComparer.Ordinal));
    }

    private async Task AddSignatures(Func<Signature, bool> wanted) => content.Signatures.AddRange(
        (await Rows("signature", RecordRows.Signature, RecordRows.SignatureOf, "0 = 0")).Where(wanted)
            .OrderBy(s => s.PracticalId, StringComparer.Ordinal).ThenBy(s => s.PracticalVersion).ThenBy(s => s.At)
            .ThenBy(s => s.Fingerprint, StringComparer.Ordinal).ThenBy(s => s.Initials, StringComparer.Ordinal));

    private async Task AddDecisions() => content.Decisions.AddRange(
        (await Rows("number_decision", RecordRows.Decision, RecordRows.DecisionOf, "0 = 0"))
            .OrderBy(d => d.PracticalId, StringComparer.Ordinal).ThenBy(d => d.PracticalVersion).ThenBy(d => d.At)
            .ThenBy(d => d.ClassName, StringComparer.Ordinal).ThenBy(d => d.Number, StringComparer.Ordinal));

    private Task<List<T>> Rows<T>(string table, string columns, Func<DbDataReader, T> row, string which, params (string Name, object? Value)[] values) =>
        session.Query($"SELECT {columns} FROM {table} WHERE school = @school AND {which}", row, cancel, values);
}
