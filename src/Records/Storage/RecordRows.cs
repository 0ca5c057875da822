using System.Data.Common;
using Calx.Records.Lessons;

namespace Calx.Records.Storage;

/// <summary>Rows as records: the columns of each table in one order, the values of a record for them, and back.</summary>
internal static class RecordRows
{
    public const string Class = "id, year, name, names_forgotten";
    public const string Member = "class_id, number, name";
    public const string Balance = "id, letter, label, resolution";
    public const string Check = "id, balance_id, checked_at, weight, shown, checked_by, note";
    public const string Lesson =
        "id, class_id, practical_id, practical_version, practical_source, plan, held_on, room, group_count, minutes, assessed, decide_first, trial, teacher, period";
    public const string Door = "lesson_id, code, station_code, opened_at, closed_at";
    public const string Signature = "practical_id, practical_version, fingerprint, initials, signed_at";
    public const string Decision = "practical_id, practical_version, class_name, number_id, was, became, rests_on, lessons, initials, decided_at";

    public static SchoolClass ClassOf(DbDataReader row) => new(row.Id(0), row.GetString(1), row.GetString(2), row.Flag(3));

    public static Member MemberOf(DbDataReader row) => new(row.Id(0), row.Whole(1), row.GetString(2));

    public static KeptBalance BalanceOf(DbDataReader row) => new(row.Id(0), row.GetString(1), row.GetString(2), row.GetString(3));

    public static BalanceCheck CheckOf(DbDataReader row) => new(
        row.Id(0), row.Id(1), row.Time(2), Written.NumberOf(row.GetString(3)), Written.NumberOf(row.GetString(4)), row.GetString(5), row.GetString(6));

    public static Lesson LessonOf(DbDataReader row) => new(
        row.Id(0),
        row.Id(1),
        row.GetString(2),
        row.Whole(3),
        row.GetString(4),
        row.GetString(5),
        Written.DateOf(row.GetString(6)),
        row.GetString(7),
        row.Whole(8),
        row.Whole(9),
        new LessonSettings(row.Flag(10), row.Flag(11), row.Flag(12)),
        row.GetString(13),
        row.GetString(14));

    public static LessonDoor DoorOf(DbDataReader row) => new(
        row.Id(0), row.GetString(1), row.GetString(2), row.Time(3), row.IsDBNull(4) ? null : row.Time(4));

    public static Signature SignatureOf(DbDataReader row) => new(row.GetString(0), row.Whole(1), row.GetString(2), row.GetString(3), row.Time(4));

    public static NumberDecision DecisionOf(DbDataReader row) => new(
        row.GetString(0), row.Whole(1), row.GetString(2), row.GetString(3), row.GetString(4), row.GetString(5), row.GetString(6), row.Whole(7), row.GetString(8), row.Time(9));

    public static (string Name, object? Value)[] Of(SchoolClass one) =>
        [("id", one.Id.ToString()), ("year", one.Year), ("name", one.Name), ("names_forgotten", Written.Flag(one.NamesForgotten))];

    public static (string Name, object? Value)[] Of(Member one) =>
        [("class_id", one.ClassId.ToString()), ("number", (long)one.Number), ("name", one.Name)];

    public static (string Name, object? Value)[] Of(KeptBalance one) =>
        [("id", one.Id.ToString()), ("letter", one.Letter), ("label", one.Label), ("resolution", one.Resolution)];

    public static (string Name, object? Value)[] Of(BalanceCheck one) =>
    [
        ("id", one.Id.ToString()), ("balance_id", one.BalanceId.ToString()), ("checked_at", Written.Time(one.At)), ("weight", one.Weight.ToString()),
        ("shown", one.Shown.ToString()), ("checked_by", one.By), ("note", one.Note),
    ];

    public static (string Name, object? Value)[] Of(Lesson one) =>
    [
        ("id", one.Id.ToString()), ("class_id", one.ClassId.ToString()), ("practical_id", one.PracticalId), ("practical_version", (long)one.PracticalVersion),
        ("practical_source", one.PracticalSource), ("plan", one.Plan), ("held_on", Written.Date(one.Date)), ("room", one.Room), ("group_count", (long)one.Groups),
        ("minutes", (long)one.Minutes), ("assessed", Written.Flag(one.Settings.Assessed)), ("decide_first", Written.Flag(one.Settings.DecideFirst)),
        ("trial", Written.Flag(one.Settings.Trial)), ("teacher", one.Teacher), ("period", one.Period),
    ];

    public static (string Name, object? Value)[] Of(LessonDoor one) =>
    [
        ("lesson_id", one.LessonId.ToString()), ("code", one.Code), ("station_code", one.StationCode), ("opened_at", Written.Time(one.OpenedAt)),
        ("closed_at", one.ClosedAt is DateTimeOffset closed ? Written.Time(closed) : null),
    ];

    public static (string Name, object? Value)[] Of(Signature one) =>
    [
        ("practical_id", one.PracticalId), ("practical_version", (long)one.PracticalVersion), ("fingerprint", one.Fingerprint), ("initials", one.Initials),
        ("signed_at", Written.Time(one.At)),
    ];

    public static (string Name, object? Value)[] Of(NumberDecision one) =>
    [
        ("practical_id", one.PracticalId), ("practical_version", (long)one.PracticalVersion), ("class_name", one.ClassName), ("number_id", one.Number),
        ("was", one.Was), ("became", one.Became), ("rests_on", one.RestsOn), ("lessons", (long)one.Lessons), ("initials", one.Initials),
        ("decided_at", Written.Time(one.At)),
    ];

    /// <summary>A statement that adds a row.</summary>
    public static string Insert(string table, (string Name, object? Value)[] values) =>
        $"INSERT INTO {table} (school, {string.Join(", ", values.Select(v => v.Name))}) VALUES (@school, {string.Join(", ", values.Select(v => "@" + v.Name))})";

    /// <summary>A statement that changes the row with the same id.</summary>
    public static string Update(string table, (string Name, object? Value)[] values) =>
        $"UPDATE {table} SET {string.Join(", ", values.Where(v => v.Name != "id").Select(v => $"{v.Name} = @{v.Name}"))} WHERE school = @school AND id = @id";
}
