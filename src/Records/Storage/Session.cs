using System.Data.Common;

namespace Calx.Records.Storage;

/// <summary>A connection for a while: to read, or within a transaction to change. Every statement is given the school as
/// <c>@school</c>.</summary>
internal sealed class Session(Dialect dialect, string school, DbConnection connection, DbTransaction? transaction)
{
    private readonly List<RecordChange> changes = [];

    public Dialect Dialect => dialect;

    public string School => school;

    /// <summary>What is to be told when the transaction is committed.</summary>
    public IReadOnlyList<RecordChange> Changes => changes;

    /// <summary>Set where the change was refused, or all was so already: the transaction is rolled back.</summary>
    public bool KeepsNothing { get; private set; }

    public async Task<int> Execute(string sql, CancellationToken cancel, params (string Name, object? Value)[] values)
    {
        await using DbCommand command = Command(sql, values);
        return await command.ExecuteNonQueryAsync(cancel);
    }

    public async Task<List<T>> Query<T>(string sql, Func<DbDataReader, T> row, CancellationToken cancel, params (string Name, object? Value)[] values)
    {
        await using DbCommand command = Command(sql, values);
        await using DbDataReader reader = await command.ExecuteReaderAsync(cancel);
        var rows = new List<T>();
        while (await reader.ReadAsync(cancel))
        {
            rows.Add(row(reader));
        }

        return rows;
    }

    public async Task<T?> Find<T>(string sql, Func<DbDataReader, T> row, CancellationToken cancel, params (string Name, object? Value)[] values)
        where T : class => (await Query(sql, row, cancel, values)).FirstOrDefault();

    public async Task<bool> Any(string sql, CancellationToken cancel, params (string Name, object? Value)[] values) =>
        (await Query(sql, static _ => true, cancel, values)).Count > 0;

    public Task InsertAll(string table, string[] columns, IReadOnlyList<object?[]> rows, CancellationToken cancel) =>
        dialect.InsertAll(connection, transaction!, table, columns, rows, cancel);

    public void Tell(RecordId? lesson, string what) => changes.Add(new RecordChange(lesson, what));

    public ChangeResult Refuse(string reason)
    {
        KeepsNothing = true;
        return new ChangeResult.Refused(reason);
    }

    public ChangeResult Unchanged()
    {
        KeepsNothing = true;
        return new ChangeResult.Done();
    }

    private DbCommand Command(string sql, (string Name, object? Value)[] values)
    {
        DbCommand command = connection.CreateCommand();
        command.Transaction = transaction;
        command.CommandText = sql;
        Add(command, "school", school);
        foreach ((string name, object? value) in values)
        {
            Add(command, name, value);
        }

        return command;
    }

    private static void Add(DbCommand command, string name, object? value)
    {
        DbParameter parameter = command.CreateParameter();
        parameter.ParameterName = name;
        parameter.Value = value ?? DBNull.Value;
        command.Parameters.Add(parameter);
    }
}
