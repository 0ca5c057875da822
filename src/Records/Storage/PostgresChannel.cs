using System.Data.Common;
using System.Security.Cryptography;
using System.Text;
using Npgsql;

namespace Calx.Records.Storage;

/// <summary>How programs on one database tell each other what they changed: one channel a school, and messages
/// <c>sender lesson what</c>, with a hyphen for no lesson.</summary>
internal sealed class PostgresChannel(NpgsqlDataSource source, string school)
{
    /// <summary>So that a program does not hear itself.</summary>
    private readonly string self = Guid.NewGuid().ToString("N");

    /// <summary>A channel's name has at most 63 bytes, and a school's name may be anything.</summary>
    public string Name { get; } = "calx_" + Convert.ToHexStringLower(SHA256.HashData(Encoding.UTF8.GetBytes(school)).AsSpan(0, 16));

    public NpgsqlDataSource Source => source;

    public async Task Tell(DbConnection connection, IReadOnlyList<RecordChange> changes, CancellationToken cancel)
    {
        await using DbCommand command = connection.CreateCommand();
        command.CommandText = "SELECT pg_notify(@channel, message) FROM unnest(@messages) AS message";
        command.Parameters.Add(new NpgsqlParameter("channel", Name));
        command.Parameters.Add(new NpgsqlParameter("messages", changes.Select(c => $"{self} {c.Lesson?.ToString() ?? "-"} {c.What}").ToArray()));
        await command.ExecuteNonQueryAsync(cancel);
    }

    /// <summary>What a message says, or null where it is this program's own or cannot be read.</summary>
    public RecordChange? Read(string message)
    {
        string[] words = message.Split(' ');
        return words.Length != 3 || words[0] == self
            ? null
            : new RecordChange(RecordId.TryParse(words[1], out RecordId lesson) ? lesson : null, words[2]);
    }
}
