using System.Data.Common;
using System.Text.Json.Nodes;
using Calx.Records.Lessons;

namespace Calx.Records.Storage;

/// <summary>A line of the audit while its change is made.</summary>
internal sealed class AuditParts
{
    /// <summary>Longest name of who changed something.</summary>
    public const int LongestBy = 200;

    /// <summary>In the order in which <see cref="Read"/> takes them.</summary>
    public const string Columns = "number, done_at, done_by, what, subject, was, became";

    private AuditParts(long number) => Number = number;

    public long Number { get; }

    public string? Before { get; private set; }

    public string? After { get; private set; }

    public static async Task<AuditParts> Begin(Session session, CancellationToken cancel) => new(
        (await session.Query("UPDATE school SET audits = audits + 1 WHERE name = @school RETURNING audits", row => row.GetInt64(0), cancel))[0]);

    /// <summary>A record that is new, without the long snapshots, which stand in the record itself.</summary>
    public ChangeResult Added(JsonObject after)
    {
        after.Remove("practicalSource");
        after.Remove("plan");
        After = after.ToJsonString();
        return new ChangeResult.Done();
    }

    /// <summary>A record that became another: the parts that differ.</summary>
    public ChangeResult Changed(JsonObject before, JsonObject after)
    {
        (Before, After) = (RecordJson.Differing(before, after).ToJsonString(), RecordJson.Differing(after, before).ToJsonString());
        return new ChangeResult.Done();
    }

    /// <summary>Something that is said by the line itself.</summary>
    public ChangeResult Said(string? after = null)
    {
        After = after;
        return new ChangeResult.Done();
    }

    /// <summary>A text that became another.</summary>
    public ChangeResult Replaced(string? before, string after)
    {
        (Before, After) = (before, after);
        return new ChangeResult.Done();
    }

    public static async Task Write(Session session, AuditLine line, CancellationToken cancel) => await session.Execute(
        "INSERT INTO audit (school, number, done_at, done_by, what, subject, was, became) VALUES (@school, @number, @at, @by, @what, @subject, @was, @became)",
        cancel,
        ("number", line.Number),
        ("at", Written.Time(line.At)),
        ("by", line.By),
        ("what", line.What),
        ("subject", line.Subject),
        ("was", line.Before),
        ("became", line.After));

    public static AuditLine Read(DbDataReader row) => new(
        row.GetInt64(0), row.Time(1), row.GetString(2), row.GetString(3), row.GetString(4), row.TextOrNull(5), row.TextOrNull(6));
}
