using System.Data.Common;
using Calx.Records.Lessons;

namespace Calx.Records.Storage;

/// <summary>A table into which records of an archive are taken.</summary>
/// <param name="Name">The table.</param>
/// <param name="Columns">Its columns in the order in which <paramref name="Row"/> takes them.</param>
/// <param name="Row">A row as a record.</param>
/// <param name="Values">A record as a row.</param>
/// <param name="Key">The columns by which a record is known again.</param>
/// <param name="Unique">Columns whose values together no other record may have; empty where there are none.</param>
/// <param name="Whole">The table of what the record belongs to, and the column that names it; null where it belongs to nothing.</param>
internal sealed record IntakeTable<T>(
    string Name,
    string Columns,
    Func<DbDataReader, T> Row,
    Func<T, (string Name, object? Value)[]> Values,
    string[] Key,
    string[] Unique,
    (string Table, string Column)? Whole);

/// <summary>The tables of an archive's records.</summary>
internal static class IntakeTables
{
    public static readonly IntakeTable<SchoolClass> Classes = new(
        "class", RecordRows.Class, RecordRows.ClassOf, RecordRows.Of, ["id"], ["year", "name"], null);

    public static readonly IntakeTable<Member> Members = new(
        "member", RecordRows.Member, RecordRows.MemberOf, RecordRows.Of, ["class_id", "number"], [], ("class", "class_id"));

    public static readonly IntakeTable<KeptBalance> Balances = new(
        "balance", RecordRows.Balance, RecordRows.BalanceOf, RecordRows.Of, ["id"], ["letter"], null);

    public static readonly IntakeTable<BalanceCheck> Checks = new(
        "balance_check", RecordRows.Check, RecordRows.CheckOf, RecordRows.Of, ["id"], [], ("balance", "balance_id"));

    public static readonly IntakeTable<Signature> Signatures = new(
        "signature", RecordRows.Signature, RecordRows.SignatureOf, RecordRows.Of,
        ["practical_id", "practical_version", "fingerprint", "initials", "signed_at"], [], null);

    public static readonly IntakeTable<NumberDecision> Decisions = new(
        "number_decision", RecordRows.Decision, RecordRows.DecisionOf, RecordRows.Of,
        ["practical_id", "practical_version", "class_name", "number_id", "decided_at"], [], null);

    public static readonly IntakeTable<Lesson> Lessons = new(
        "lesson", RecordRows.Lesson, RecordRows.LessonOf, RecordRows.Of, ["id"], [], ("class", "class_id"));
}
