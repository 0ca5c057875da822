using Calx.Records.Archive;
using Calx.Records.Journal;
using Calx.Records.Lessons;

namespace Calx.Records.Storage;

/// <summary>Holds each record of an archive against what is kept: new ones are added, the same are known, others under a taken id or
/// name are refused. Nothing that is there is changed.</summary>
internal sealed class ArchiveIntake(Session session, CancellationToken cancel)
{
    private readonly List<string> refused = [];

    public int Added { get; private set; }

    public int Known { get; private set; }

    public IReadOnlyList<string> Refused => refused;

    public async Task Take(ArchiveContent content)
    {
        foreach (SchoolClass one in content.Classes)
        {
            await Put(IntakeTables.Classes, one, $"class {one.Name} of {one.Year}");
        }

        foreach (Member one in content.Members)
        {
            await Take(one);
        }

        foreach (KeptBalance one in content.Balances)
        {
            await Put(IntakeTables.Balances, one, $"balance {one.Letter}");
        }

        foreach (BalanceCheck one in content.Checks)
        {
            await Put(IntakeTables.Checks, one, $"check {one.Id}");
        }

        foreach (Signature one in content.Signatures)
        {
            await Put(IntakeTables.Signatures, one, $"signature for {one.PracticalId}");
        }

        foreach (NumberDecision one in content.Decisions)
        {
            await Put(IntakeTables.Decisions, one, $"decision on {one.Number} of {one.PracticalId}");
        }

        foreach (ArchivedLesson lesson in content.Lessons)
        {
            await Take(lesson);
        }
    }

    private async Task Take(Member one)
    {
        string name = FormattableString.Invariant($"member {one.Number} of class {one.ClassId}");
        (string, object?) id = ("id", one.ClassId.ToString());
        if (one.Name.Length > 0 && await session.Any("SELECT 1 FROM class WHERE school = @school AND id = @id AND names_forgotten = 1", cancel, id))
        {
            refused.Add($"{name} was not taken: this class's names were forgotten.");
            return;
        }

        await Put(IntakeTables.Members, one, name);
    }

    private async Task Take(ArchivedLesson archived)
    {
        RecordId id = archived.Lesson.Id;
        string name = $"lesson {id} of {Written.Date(archived.Lesson.Date)}";
        (string, object?) lesson = ("lesson", id.ToString());
        await Put(IntakeTables.Lessons, archived.Lesson, name);
        // A lesson whose room or bell was changed here keeps them; what was typed in it elsewhere is added all the same.
        if (!await session.Any("SELECT 1 FROM lesson WHERE school = @school AND id = @lesson", cancel, lesson))
        {
            return;
        }

        await session.Execute("INSERT INTO journal (school, lesson_id, entries) VALUES (@school, @lesson, 0) ON CONFLICT DO NOTHING", cancel, lesson);
        long end = (await session.Query(
            $"SELECT entries FROM journal WHERE school = @school AND lesson_id = @lesson{session.Dialect.ForUpdate}", row => row.GetInt64(0), cancel, lesson))[0];
        List<object?[]> rows = await NewRows(archived, end, name);
        if (rows.Count > 0)
        {
            await session.InsertAll("entry", EntryRow.Columns, rows, cancel);
            await session.Execute(
                "UPDATE journal SET entries = @entries WHERE school = @school AND lesson_id = @lesson", cancel, lesson, ("entries", end + rows.Count));
            Added += rows.Count;
        }
    }

    /// <summary>The entries that are nowhere in the school yet, numbered on from the journal's end.</summary>
    private async Task<List<object?[]>> NewRows(ArchivedLesson archived, long end, string name)
    {
        RecordId lesson = archived.Lesson.Id;
        Dictionary<EntryId, (RecordId Lesson, KeptEntry Kept)> known =
            await EntryWriter.Known(session, archived.Journal.Select(k => k.Entry.Id), cancel);
        var rows = new List<object?[]>();
        foreach (KeptEntry kept in archived.Journal.OrderBy(k => k.Number))
        {
            if (!known.TryGetValue(kept.Entry.Id, out (RecordId Lesson, KeptEntry Kept) first))
            {
                var added = new KeptEntry(kept.Entry, end + rows.Count + 1, kept.ReceivedAt);
                known.Add(kept.Entry.Id, (lesson, added));
                rows.Add(EntryRow.Of(session.School, lesson, added));
            }
            else if (first.Lesson == lesson && first.Kept.Entry == kept.Entry)
            {
                Known++;
            }
            else
            {
                refused.Add($"{name}: the entry {kept.Entry.Id} was not taken: another entry has its id already.");
            }
        }

        return rows;
    }

    private async Task Put<T>(IntakeTable<T> table, T record, string name)
        where T : class
    {
        (string Name, object? Value)[] values = table.Values(record);
        if (await session.Find($"SELECT {table.Columns} FROM {table.Name} WHERE school = @school AND {Same(table.Key)}", table.Row, cancel, values) is T kept)
        {
            bool same = kept.Equals(record);
            Known += same ? 1 : 0;
            refused.AddRange(same ? [] : [$"{name} was not taken: another is kept under its id, and it stays as it is."]);
        }
        else if (table.Unique.Length > 0 && await session.Any($"SELECT 1 FROM {table.Name} WHERE school = @school AND {Same(table.Unique)}", cancel, values))
        {
            refused.Add($"{name} was not taken: there is another of that name.");
        }
        else if (table.Whole is (string whole, string column)
            && !await session.Any($"SELECT 1 FROM {whole} WHERE school = @school AND id = @{column}", cancel, values))
        {
            refused.Add($"{name} was not taken: the {whole} that it belongs to is not here.");
        }
        else
        {
            await session.Execute(RecordRows.Insert(table.Name, values), cancel, values);
            Added++;
        }
    }

    private static string Same(string[] columns) => string.Join(" AND ", columns.Select(c => $"{c} = @{c}"));
}
