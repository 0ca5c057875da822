using Calx.Records.Lessons;

namespace Calx.Records.Storage;

/// <summary>Signatures of the safety check, settings, the audit, and the keys of the web.</summary>
public sealed partial class RecordStore
{
    /// <summary>Longest key of a setting, or name of a key element.</summary>
    public const int LongestKey = 200;

    /// <summary>Longest value of a setting, or text of a key element.</summary>
    public const int LongestValue = 100_000;

    /// <summary>Adds a signature. None is ever taken back; a change of what was signed for asks for another.</summary>
    /// <param name="signature">The signature.</param>
    /// <param name="by">Who enters it.</param>
    /// <param name="cancel">Gives up.</param>
    public Task<ChangeResult> Sign(Signature signature, string by, CancellationToken cancel = default)
    {
        ArgumentNullException.ThrowIfNull(signature);
        (string Name, object? Value)[] values = RecordRows.Of(signature);
        return Change(
            by,
            "signed",
            $"practical {signature.PracticalId}",
            async (session, audit) =>
            {
                if (await session.Execute(RecordRows.Insert("signature", values) + " ON CONFLICT DO NOTHING", cancel, values) == 0)
                {
                    return session.Unchanged();
                }

                session.Tell(null, RecordChange.Signatures);
                return audit.Added(RecordJson.Of(signature));
            },
            cancel);
    }

    /// <summary>All signatures for a practical, the latest first.</summary>
    /// <param name="practicalId">The practical.</param>
    /// <param name="cancel">Gives up.</param>
    public async Task<IReadOnlyList<Signature>> Signatures(string practicalId, CancellationToken cancel = default) =>
    [
        .. (await Read(
            $"SELECT {RecordRows.Signature} FROM signature WHERE school = @school AND practical_id = @practical", RecordRows.SignatureOf, cancel, ("practical", practicalId)))
            .OrderByDescending(s => s.At),
    ];

    /// <summary>A setting's value, or null where it was never put.</summary>
    /// <param name="key">Its key.</param>
    /// <param name="cancel">Gives up.</param>
    public Task<string?> Setting(string key, CancellationToken cancel = default) =>
        Find("SELECT value FROM setting WHERE school = @school AND name = @name", row => row.GetString(0), cancel, ("name", key));

    /// <summary>Puts a setting.</summary>
    /// <param name="key">Its key.</param>
    /// <param name="value">Its value.</param>
    /// <param name="isSecret">Whether the value, as that of a passphrase's hash, is to stay out of the audit and of every export. Once
    /// secret, a setting stays so.</param>
    /// <param name="by">Who puts it.</param>
    /// <param name="cancel">Gives up.</param>
    /// <exception cref="ArgumentException">The key is blank or longer than <see cref="LongestKey"/>, or the value longer than <see cref="LongestValue"/>.</exception>
    public Task<ChangeResult> PutSetting(string key, string value, bool isSecret, string by, CancellationToken cancel = default)
    {
        KeptText.Needed(key, LongestKey, nameof(key));
        KeptText.MayBeEmpty(value, LongestValue, nameof(value));
        return Change(by, "setting-put", $"setting {key}", (s, a) => Put(s, a, new KeptSetting(key, value, isSecret), cancel), cancel);
    }

    /// <summary>The last lines of the audit, the latest first.</summary>
    /// <param name="lastN">How many at most.</param>
    /// <param name="cancel">Gives up.</param>
    public async Task<IReadOnlyList<AuditLine>> Audit(int lastN, CancellationToken cancel = default) => await Read(
        $"SELECT {AuditParts.Columns} FROM audit WHERE school = @school ORDER BY number DESC LIMIT @most", AuditParts.Read, cancel, ("most", (long)lastN));

    /// <summary>The XML elements of the key ring that signs cookies, in the order of their names: programs on one database share it.</summary>
    /// <param name="cancel">Gives up.</param>
    public async Task<IReadOnlyList<string>> KeyElements(CancellationToken cancel = default) =>
        [.. (await Read("SELECT name, xml FROM web_key WHERE school = @school", row => (Name: row.GetString(0), Xml: row.GetString(1)), cancel)).OrderBy(k => k.Name, StringComparer.Ordinal).Select(k => k.Xml)];

    /// <summary>Adds an element to the key ring; one of that name stays as it is. The audit names it and never shows it.</summary>
    /// <param name="name">Its name.</param>
    /// <param name="xml">Its text.</param>
    /// <param name="cancel">Gives up.</param>
    public async Task AddKeyElement(string name, string xml, CancellationToken cancel = default)
    {
        KeptText.Needed(name, LongestKey, nameof(name));
        KeptText.Needed(xml, LongestValue, nameof(xml));
        await Change(
            "program",
            "web-key-added",
            $"web-key {name}",
            async (session, audit) => await session.Execute(
                "INSERT INTO web_key (school, name, xml) VALUES (@school, @name, @xml) ON CONFLICT DO NOTHING", cancel, ("name", name), ("xml", xml)) == 0
                ? session.Unchanged()
                : audit.Said(),
            cancel);
    }

    private static async Task<ChangeResult> Put(Session session, AuditParts audit, KeptSetting put, CancellationToken cancel)
    {
        KeptSetting? was = await session.Find(
            "SELECT name, value, secret FROM setting WHERE school = @school AND name = @name", row => new KeptSetting(row.GetString(0), row.GetString(1), row.Flag(2)), cancel, ("name", put.Key));
        KeptSetting now = put with { IsSecret = put.IsSecret || was is { IsSecret: true } };
        if (now == was)
        {
            return session.Unchanged();
        }

        await session.Execute(
            "INSERT INTO setting (school, name, value, secret) VALUES (@school, @name, @value, @secret) ON CONFLICT (school, name) DO UPDATE SET value = excluded.value, secret = excluded.secret",
            cancel,
            ("name", now.Key),
            ("value", now.Value),
            ("secret", Written.Flag(now.IsSecret)));
        session.Tell(null, RecordChange.Settings);
        return now.IsSecret ? audit.Said() : audit.Replaced(was?.Value, now.Value);
    }
}
