using Calx.Measurement.Numbers;
using Calx.Records.Journal;
using Calx.Records.Lessons;
using Calx.Records.Storage;
using Calx.Records.Tests.Places;

namespace Calx.Records.Tests.Storage;

/// <summary>Classes, balances, lessons, doors, signatures and settings, and the audit of their changes.</summary>
public abstract class KeptLessonsTests(Place place)
{
    [Fact]
    public async Task Classes_stand_by_year_and_name_and_two_of_one_name_do_not_share_a_year()
    {
        await using RecordStore store = await place.OpenFresh();
        var next = new SchoolClass(RecordId.Draw(), "2026/27", "9F", false);
        var other = new SchoolClass(RecordId.Draw(), "2025/26", "9G", false);
        await Sample.Done(store.AddClass(other, Sample.By, Sample.Cancel));
        await Sample.Done(store.AddClass(Sample.Class, Sample.By, Sample.Cancel));
        await Sample.Done(store.AddClass(next, Sample.By, Sample.Cancel));
        Assert.Equal([next, Sample.Class, other], await store.Classes(Sample.Cancel));
        Assert.Contains("9F in 2025/26", await Sample.Refused(store.AddClass(new SchoolClass(RecordId.Draw(), "2025/26", "9F", false), Sample.By, Sample.Cancel)), StringComparison.Ordinal);
        Assert.Contains("9F in 2025/26", await Sample.Refused(store.RenameClass(other.Id, "9F", Sample.By, Sample.Cancel)), StringComparison.Ordinal);
        await Sample.Refused(store.RenameClass(RecordId.Draw(), "9H", Sample.By, Sample.Cancel));
        await Sample.Done(store.RenameClass(other.Id, "9H", Sample.By, Sample.Cancel));
        Assert.Equal("9H", (await store.FindClass(other.Id, Sample.Cancel))!.Name);
        Assert.Equal(3, (await store.Classes(Sample.Cancel)).Count);
    }

    [Fact]
    public async Task A_lesson_keeps_who_teaches_it_and_in_which_period()
    {
        await using RecordStore store = await place.OpenFresh();
        await Sample.Prepare(store);
        Lesson was = Sample.Lesson;
        Assert.Equal(("", ""), (was.Teacher, was.Period));
        var changed = new Lesson(
            was.Id, was.ClassId, was.PracticalId, was.PracticalVersion, was.PracticalSource, was.Plan, was.Date, was.Room, was.Groups, was.Minutes, was.Settings, "R. Quill", "10:40 – 12:00");
        await Sample.Done(store.ChangeLesson(changed, Sample.By, Sample.Cancel));
        Assert.Equal(changed, await store.FindLesson(was.Id, Sample.Cancel));
        AuditLine line = (await store.Audit(1, Sample.Cancel))[0];
        Assert.Equal(("""{"teacher":"","period":""}""", "R. Quill"), (line.Before, System.Text.Json.Nodes.JsonNode.Parse(line.After!)!["teacher"]!.GetValue<string>()));
        Assert.Throws<ArgumentException>(() => new Lesson(
            was.Id, was.ClassId, was.PracticalId, 1, was.PracticalSource, was.Plan, was.Date, "", 1, 1, was.Settings, new string('Q', Lesson.LongestName + 1)));
    }

    [Fact]
    public async Task Lessons_of_one_practical_keep_each_the_version_with_which_it_was_made()
    {
        await using RecordStore store = await place.OpenFresh();
        await Sample.Prepare(store);
        Lesson was = Sample.Lesson;
        var second = new Lesson(
            RecordId.Draw(), was.ClassId, was.PracticalId, 2, "practical: magnesium-oxide\nversion: 2\n", was.Plan, was.Date, was.Room, was.Groups, was.Minutes, was.Settings);
        await Sample.Done(store.AddLesson(second, Sample.By, Sample.Cancel));
        Lesson first = (await store.FindLesson(was.Id, Sample.Cancel))!;
        Assert.Equal((1, was.PracticalSource), (first.PracticalVersion, first.PracticalSource));
        Assert.Equal(second, await store.FindLesson(second.Id, Sample.Cancel));
    }

    [Fact]
    public async Task A_lesson_is_a_cover_lesson_by_the_last_word_before_it_began()
    {
        await using RecordStore store = await place.OpenFresh();
        await Sample.Prepare(store);
        RecordId other = RecordId.Parse("9f0000000009");
        await Sample.Done(store.AddLesson(Sample.OfId(other), Sample.By, Sample.Cancel));
        Assert.Empty(await store.CoverLessons(Sample.Cancel));
        await Happens(store, 1, Sample.LessonId, "cover", "yes");
        await Happens(store, 2, other, "cover", "yes");
        // Of a group, or no happening: another matter.
        await store.Append(other, Sample.Entry(3, new JournalCell(1, 1, "cover"), new EntryContent.Happening("no")), Sample.Cancel);
        await store.Append(other, Sample.Entry(4, new JournalCell(0, 1, "cover"), new EntryContent.Note("no")), Sample.Cancel);
        Assert.Equal([Sample.LessonId, other], (await store.CoverLessons(Sample.Cancel)).OrderBy(i => i.ToString()));
        await Happens(store, 5, Sample.LessonId, "cover", "no");
        Assert.Equal([other], await store.CoverLessons(Sample.Cancel));
        await Happens(store, 6, Sample.LessonId, "cover", "yes");
        await Happens(store, 7, Sample.LessonId, "began", "");
        await Happens(store, 8, Sample.LessonId, "cover", "no");
        await Happens(store, 9, other, "cover", "no");
        await Happens(store, 10, other, "began", "");
        await Happens(store, 11, other, "cover", "yes");
        Assert.Equal([Sample.LessonId], await store.CoverLessons(Sample.Cancel));
    }

    private static async Task Happens(RecordStore store, int id, RecordId lesson, string what, string text) => Assert.IsType<AppendResult.Added>(
        await store.Append(lesson, Sample.Entry(id, new JournalCell(0, 1, what), new EntryContent.Happening(text)), Sample.Cancel));

    [Fact]
    public async Task A_member_has_a_number_for_good_and_a_name_that_may_change()
    {
        await using RecordStore store = await place.OpenFresh();
        await Sample.Prepare(store);
        await Sample.Done(store.PutMember(new Member(Sample.ClassId, 2, "Tamsin"), Sample.By, Sample.Cancel));
        await Sample.Done(store.PutMember(new Member(Sample.ClassId, 1, "Ode"), Sample.By, Sample.Cancel));
        await Sample.Done(store.PutMember(new Member(Sample.ClassId, 2, "Tamsin W"), Sample.By, Sample.Cancel));
        await Sample.Refused(store.PutMember(new Member(RecordId.Draw(), 1, "Ode"), Sample.By, Sample.Cancel));
        Assert.Equal([(1, "Ode"), (2, "Tamsin W")], (await store.Members(Sample.ClassId, Sample.Cancel)).Select(m => (m.Number, m.Name)));
        AuditLine line = (await store.Audit(1, Sample.Cancel))[0];
        Assert.Equal(("member-put", """{"name":"Tamsin"}""", """{"name":"Tamsin W"}"""), (line.What, line.Before, line.After));
    }

    [Fact]
    public async Task A_balance_has_its_letter_alone_and_keeps_its_checks()
    {
        await using RecordStore store = await place.OpenFresh();
        await Sample.Done(store.AddBalance(Sample.Balance, Sample.By, Sample.Cancel));
        Assert.Contains("balance A", await Sample.Refused(store.AddBalance(new KeptBalance(RecordId.Draw(), "A", "", "0.1"), Sample.By, Sample.Cancel)), StringComparison.Ordinal);
        var moved = new KeptBalance(Sample.BalanceId, "A", "by the door", "0.010");
        await Sample.Done(store.ChangeBalance(moved, Sample.By, Sample.Cancel));
        Assert.Equal([moved], await store.Balances(Sample.Cancel));
        var first = new BalanceCheck(RecordId.Draw(), Sample.BalanceId, Sample.Noon, new WrittenNumber(100.00m), new WrittenNumber(100.02m), "R. Quill", "");
        var later = new BalanceCheck(RecordId.Draw(), Sample.BalanceId, Sample.Noon.AddDays(7), new WrittenNumber(100.00m), new WrittenNumber(99.90m), "R. Quill", "level reset");
        await Sample.Done(store.AddCheck(first, Sample.By, Sample.Cancel));
        await Sample.Done(store.AddCheck(later, Sample.By, Sample.Cancel));
        await Sample.Refused(store.AddCheck(later, Sample.By, Sample.Cancel));
        Assert.Equal([later, first], await store.Checks(Sample.BalanceId, Sample.Cancel));
        Assert.Equal("99.90", (await store.Checks(Sample.BalanceId, Sample.Cancel))[0].Shown.ToString());
    }

    [Fact]
    public async Task A_lesson_keeps_its_snapshots_and_what_it_was_before_a_change()
    {
        await using RecordStore store = await place.OpenFresh();
        Assert.NotEmpty(await Sample.Refused(store.AddLesson(Sample.Lesson, Sample.By, Sample.Cancel)));
        await Sample.Prepare(store);
        Lesson later = Sample.OfId(RecordId.Draw(), day: 11);
        await Sample.Done(store.AddLesson(later, Sample.By, Sample.Cancel));
        Assert.Equal([later, Sample.Lesson], await store.Lessons(Sample.Cancel));
        Assert.Equal([later, Sample.Lesson], await store.LessonsOf(Sample.ClassId, Sample.Cancel));
        Lesson changed = Sample.OfId(Sample.LessonId, plan: """{"groups":10}""", room: "Lab 4");
        await Sample.Done(store.ChangeLesson(changed, Sample.By, Sample.Cancel));
        await Sample.Refused(store.ChangeLesson(Sample.OfId(RecordId.Draw()), Sample.By, Sample.Cancel));
        Assert.Equal(changed, await store.FindLesson(Sample.LessonId, Sample.Cancel));
        AuditLine line = (await store.Audit(1, Sample.Cancel))[0];
        Assert.Equal($"lesson {Sample.LessonId}", line.Subject);
        Assert.Equal("""{"plan":"{\u0022groups\u0022:12}","room":"Lab 2"}""", line.Before);
    }

    [Fact]
    public async Task A_door_is_found_by_its_codes_while_it_is_open_and_never_after()
    {
        await using RecordStore store = await place.OpenFresh();
        await Sample.Prepare(store);
        Assert.Null(await store.OpenDoor(RecordId.Draw(), Sample.By, Sample.Cancel));
        LessonDoor door = (await store.OpenDoor(Sample.LessonId, Sample.By, Sample.Cancel))!;
        Assert.Equal((6, 8), (door.Code.Length, door.StationCode.Length));
        Assert.DoesNotContain(door.Code + door.StationCode, c => "AEIOULQVY0123456789".Contains(c, StringComparison.Ordinal));
        Assert.Equal(door, await store.OpenDoor(Sample.LessonId, Sample.By, Sample.Cancel));
        Assert.Equal(door, await store.FindDoor(door.Code.ToLowerInvariant().Insert(3, " "), Sample.Cancel));
        Assert.Equal(door, await store.FindDoor(door.StationCode, Sample.Cancel));
        Assert.Null(await store.FindDoor("", Sample.Cancel));
        await Sample.Done(store.CloseDoor(Sample.LessonId, Sample.By, Sample.Cancel));
        Assert.Null(await store.FindDoor(door.Code, Sample.Cancel));
        Assert.False((await store.DoorOf(Sample.LessonId, Sample.Cancel))!.IsOpen);
        Assert.NotEqual(door.Code, (await store.OpenDoor(Sample.LessonId, Sample.By, Sample.Cancel))!.Code);
        Assert.DoesNotContain(await store.Audit(20, Sample.Cancel), l => $"{l.Before}{l.After}".Contains(door.Code, StringComparison.Ordinal));
    }

    [Fact]
    public async Task Signatures_stand_for_what_was_signed_the_latest_first()
    {
        await using RecordStore store = await place.OpenFresh();
        var first = new Signature("magnesium-oxide", 1, "0.30 g", "KB", Sample.Noon);
        var second = new Signature("magnesium-oxide", 2, "0.20 g", "KB", Sample.Noon.AddDays(1));
        await Sample.Done(store.Sign(first, Sample.By, Sample.Cancel));
        await Sample.Done(store.Sign(second, Sample.By, Sample.Cancel));
        await Sample.Done(store.Sign(first, Sample.By, Sample.Cancel));
        Assert.Equal([second, first], await store.Signatures("magnesium-oxide", Sample.Cancel));
        Assert.Empty(await store.Signatures("thermal", Sample.Cancel));
        Assert.Equal(2, (await store.Audit(10, Sample.Cancel)).Count);
    }

    [Fact]
    public async Task A_secret_setting_never_reaches_the_audit()
    {
        await using RecordStore store = await place.OpenFresh();
        Assert.Null(await store.Setting("school-name", Sample.Cancel));
        await Sample.Done(store.PutSetting("school-name", "Larkmoor", false, Sample.By, Sample.Cancel));
        await Sample.Done(store.PutSetting("school-name", "Larkmoor School", false, Sample.By, Sample.Cancel));
        await Sample.Done(store.PutSetting("passphrase", "hash-one", true, Sample.By, Sample.Cancel));
        await Sample.Done(store.PutSetting("passphrase", "hash-two", false, Sample.By, Sample.Cancel));
        Assert.Equal(("Larkmoor School", "hash-two"), (await store.Setting("school-name", Sample.Cancel), await store.Setting("passphrase", Sample.Cancel)));
        IReadOnlyList<AuditLine> audit = await store.Audit(10, Sample.Cancel);
        Assert.Equal([4L, 3, 2, 1], audit.Select(l => l.Number));
        Assert.Equal(("Larkmoor", "Larkmoor School"), (audit[2].Before, audit[2].After));
        Assert.DoesNotContain(audit, l => $"{l.Before}{l.After}{l.Subject}".Contains("hash", StringComparison.Ordinal));
    }

    [Fact]
    public async Task Key_elements_are_added_once_and_come_by_name()
    {
        await using RecordStore store = await place.OpenFresh();
        await store.AddKeyElement("key-b", "<key id='b'/>", Sample.Cancel);
        await store.AddKeyElement("key-a", "<key id='a'/>", Sample.Cancel);
        await store.AddKeyElement("key-b", "<other/>", Sample.Cancel);
        Assert.Equal(["<key id='a'/>", "<key id='b'/>"], await store.KeyElements(Sample.Cancel));
        Assert.DoesNotContain(await store.Audit(10, Sample.Cancel), l => $"{l.Before}{l.After}".Contains("<key", StringComparison.Ordinal));
    }

    [Fact]
    public async Task What_changes_nothing_leaves_no_line_in_the_audit()
    {
        await using RecordStore store = await place.OpenFresh();
        await Sample.Prepare(store);
        int lines = (await store.Audit(100, Sample.Cancel)).Count;
        await Sample.Done(store.ChangeLesson(Sample.Lesson, Sample.By, Sample.Cancel));
        await Sample.Done(store.ChangeBalance(Sample.Balance, Sample.By, Sample.Cancel));
        await Sample.Done(store.CloseDoor(Sample.LessonId, Sample.By, Sample.Cancel));
        await Sample.Refused(store.AddClass(Sample.Class, Sample.By, Sample.Cancel));
        Assert.Equal(lines, (await store.Audit(100, Sample.Cancel)).Count);
        Assert.Equal(Enumerable.Range(1, lines).Reverse().Select(n => (long)n), (await store.Audit(100, Sample.Cancel)).Select(l => l.Number));
    }
}
