using System.CommandLine;
using Calx.App.Output;
using Calx.App.Serving;
using Calx.Records.Storage;

namespace Calx.App.Input;

/// <summary>Whose records a command means: the options that <c>calx serve</c> has for it.</summary>
internal sealed class RecordsChoice
{
    /// <summary>The folder of the records.</summary>
    public Option<string?> Data { get; } = new("--data")
    {
        Description = "folder of the records and of practicals of your own; otherwise 'calx' in your own data folder",
        HelpName = "DIR",
    };

    /// <summary>A file that holds a connection string.</summary>
    public Option<string?> Database { get; } = new("--database")
    {
        Description = "PostgreSQL instead of a file: file that holds the connection string",
        HelpName = "FILE",
    };

    /// <summary>The school.</summary>
    public Option<string?> School { get; } = new("--school")
    {
        Description = "the school whose records these are, where several share a database",
        HelpName = "NAME",
    };

    /// <summary>All three.</summary>
    public IEnumerable<Option> All => [Data, Database, School];

    /// <summary>The time of a command that works with records.</summary>
    public static TimeProvider Clock => TimeProvider.System;

    /// <summary>Whether any records were named.</summary>
    public bool IsSaid(ParseResult result) => result.GetValue(Data) is not null || result.GetValue(Database) is not null || result.GetValue(School) is not null;

    /// <summary>Whether other records than those of a data folder were named.</summary>
    public bool IsElsewhere(ParseResult result) => result.GetValue(Database) is not null || result.GetValue(School) is not null;

    /// <summary>Why a command that only reads records finds none there, or null: opening them would make empty ones.</summary>
    public static string? Missing(ServeOptions options, string command) => options.Database is null && !File.Exists(options.Connection)
        ? $"calx {command}: there are no records in {options.DataFolder}; name their folder with --data" : null;

    /// <summary>What was chosen, or null after telling each fault on standard error.</summary>
    public ServeOptions? Options(ParseResult result, string command, Surroundings surroundings) =>
        new ServeWords(
            result.GetValue(Data), null, false, null, null, null, result.GetValue(Database), result.GetValue(School), OpensBrowser: false)
            .Options(surroundings, command);

    /// <summary>Opens the records and works with them; trouble with them is told on standard error.</summary>
    /// <param name="options">Whose records.</param>
    /// <param name="command">The command's name, for messages.</param>
    /// <param name="surroundings">Where messages go.</param>
    /// <param name="work">What is done; gives the exit code.</param>
    public static async Task<int> Open(ServeOptions options, string command, Surroundings surroundings, Func<RecordStore, CancellationToken, Task<int>> work)
    {
        CancellationToken cancellation = surroundings.Cancellation();
        try
        {
            await using RecordStore store = await RecordStore.Open(new StoreSettings(options.Connection, options.School), Clock, cancellation);
            return await work(store, cancellation);
        }
        catch (StoreUnavailableException trouble)
        {
            surroundings.Error.WriteLine($"calx {command}: {trouble.Reason}");
            return ExitCode.CannotWrite;
        }
    }
}
