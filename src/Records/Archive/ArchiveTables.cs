using System.IO.Compression;
using System.Text;
using Calx.Records.Journal;
using Calx.Records.Lessons;
using Calx.Records.Storage;

namespace Calx.Records.Archive;

/// <summary>The tables of an archive, for spreadsheets and other tools. Nothing is read back from them.</summary>
internal static class ArchiveTables
{
    /// <summary>Writes them.</summary>
    public static void Write(ZipArchive zip, ArchiveContent content, GroupsOfTable? groups)
    {
        Table(zip, "classes.csv", ["id", "year", "name", "names forgotten"], content.Classes.Select(c => new[] { c.Id.ToString(), c.Year, c.Name, YesNo(c.NamesForgotten) }));
        Table(zip, "members.csv", ["class", "number", "name"], content.Members.Select(m => new[] { m.ClassId.ToString(), Text(m.Number), m.Name }));
        Table(zip, "balances.csv", ["id", "letter", "label", "resolution / g"], content.Balances.Select(b => new[] { b.Id.ToString(), b.Letter, b.Label, b.Resolution }));
        Table(
            zip,
            "checks.csv",
            ["id", "balance", "at", "weight / g", "shown / g", "by", "note"],
            content.Checks.Select(c => new[] { c.Id.ToString(), c.BalanceId.ToString(), Written.Time(c.At), c.Weight.ToString(), c.Shown.ToString(), c.By, c.Note }));
        if (content.Decisions.Count > 0)
        {
            Table(
                zip,
                "numbers.csv",
                ["practical", "version", "class", "number", "in the file", "accepted", "rests on", "lessons", "initials", "at"],
                content.Decisions.Select(d => new[]
                {
                    d.PracticalId, Text(d.PracticalVersion), d.ClassName, d.Number, d.Was, d.IsTakenBack ? "taken back" : d.Became, d.RestsOn, Text(d.Lessons), d.Initials, Written.Time(d.At),
                }));
        }

        Table(
            zip,
            "lessons.csv",
            ["id", "class", "date", "room", "practical", "version", "groups", "minutes", "teacher", "period"],
            content.Lessons.Select(l => l.Lesson).Select(l => new[]
            {
                l.Id.ToString(), l.ClassId.ToString(), Written.Date(l.Date), l.Room, l.PracticalId, Text(l.PracticalVersion), Text(l.Groups), Text(l.Minutes), l.Teacher, l.Period,
            }));
        Table(
            zip,
            "journal.csv",
            [
                "lesson", "number", "id", "group", "trial", "member", "what", "kind", "value", "unit", "balance", "vessel", "out of", "comment", "device",
                "typed at", "replaces", "reason", "received at",
            ],
            content.Lessons.SelectMany(l => l.Journal.Select(e => Row(l.Lesson.Id, e))));
        foreach (ArchivedLesson lesson in content.Lessons)
        {
            Readings(zip, lesson, groups ?? ByNumber);
        }
    }

    /// <summary>The lesson's table as it stands: a row a group and trial, with the ids of the readings as headings, so that
    /// <c>calx analyse</c> reads it.</summary>
    private static void Readings(ZipArchive zip, ArchivedLesson lesson, GroupsOfTable groups)
    {
        var journal = new LessonJournal();
        foreach (KeptEntry kept in lesson.Journal)
        {
            journal.Append(kept.Entry, kept.ReceivedAt);
        }

        Func<int, int, string> nameOf = groups(journal);
        CellState[] cells = [.. journal.Table.Where(c => c.Current.Entry.Content is EntryContent.Reading && c.Cell.Member == 0)];
        string[] whats = [.. cells.Select(c => c.Cell.What).Distinct().OrderBy(w => cells.Where(c => c.Cell.What == w).Min(c => c.History[0].Number))];
        Table(
            zip,
            $"readings-{lesson.Lesson.Id}.csv",
            ["group", "trial", .. whats],
            cells.GroupBy(c => (c.Cell.Group, c.Cell.Trial)).Select(g => (string?[])
            [
                nameOf(g.Key.Group, g.Key.Trial),
                Text(g.Key.Trial),
                .. whats.Select(w => (g.FirstOrDefault(c => c.Cell.What == w)?.Current.Entry.Content as EntryContent.Reading)?.Written.ToString()),
            ]));
    }

    private static string?[] Row(RecordId lesson, KeptEntry kept)
    {
        JournalEntry entry = kept.Entry;
        ContentParts parts = ContentParts.Of(entry.Content);
        return
        [
            lesson.ToString(), Text(kept.Number), entry.Id.ToString(), Text(entry.Cell.Group), Text(entry.Cell.Trial), Text(entry.Cell.Member), entry.Cell.What,
            parts.Kind, parts.Value, parts.Unit, parts.Balance, parts.Vessel, parts.OutOf, parts.Comment, entry.Device, TypedAt(entry),
            entry.Replaces?.ToString(), entry.Reason, Written.Time(kept.ReceivedAt),
        ];
    }

    /// <summary>Empty where nobody knows: journals of earlier versions have the year 1970 for that.</summary>
    private static string TypedAt(JournalEntry entry) => entry.TypedAt == DateTimeOffset.UnixEpoch ? "" : Written.Time(entry.TypedAt);

    private static void Table(ZipArchive zip, string name, string[] headings, IEnumerable<string?[]> rows)
    {
        using var text = new StreamWriter(ArchiveZip.Entry(zip, name), new UTF8Encoding(encoderShouldEmitUTF8Identifier: true));
        text.Write(CsvLine.Of(headings));
        foreach (string?[] row in rows)
        {
            text.Write(CsvLine.Of(row));
        }
    }

    private static Func<int, int, string> ByNumber(LessonJournal journal) => (group, _) => Text(group);

    private static string Text(long number) => FormattableString.Invariant($"{number}");

    private static string YesNo(bool value) => value ? "yes" : "no";
}
