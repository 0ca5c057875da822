using System.Globalization;
using Calx.App.Live;
using Calx.App.Own;
using Calx.App.Serving;
using Calx.Records.Archive;
using Calx.Records.Lessons;
using Calx.Records.Storage;
using Microsoft.AspNetCore.Http;

namespace Calx.App.Pages.Keeping;

/// <summary>Writes exports and backups into the data folder, whole or not at all, or gives them to the browser.</summary>
public sealed class Exports(RecordStore store, ServeOptions options, TimeProvider clock)
{
    private readonly OwnArchive own = new(options.DataFolder);

    private const string ZipType = "application/zip";
    private const int BufferBytes = 64 * 1024;

    /// <summary>Where exports are put.</summary>
    public string Folder => Path.Combine(options.DataFolder, "exports");

    /// <summary>Writes a lesson into the folder.</summary>
    public Task<SavedFile> SaveLesson(Lesson lesson, CancellationToken cancellation) =>
        Save(Folder, $"lesson-{lesson.Id}.zip", path => Whole(path, zip => One(lesson, zip, cancellation)));

    /// <summary>Writes everything into the folder.</summary>
    public Task<SavedFile> SaveAll(CancellationToken cancellation) =>
        Save(Folder, "all.zip", path => Whole(path, zip => Everything(zip, cancellation)));

    /// <summary>Copies everything into the folder of backups: a database of SQLite as it is, the records of PostgreSQL as an export.</summary>
    public Task<SavedFile> BackUp(CancellationToken cancellation) =>
        Save(Path.Combine(options.DataFolder, "backups"), store.Settings.IsPostgres ? "all.zip" : "calx.db", path => store.BackUp(path, TableNames.Of, cancellation));

    /// <summary>Gives a lesson to the browser.</summary>
    public Task<IResult> Download(Lesson lesson, string name, CancellationToken cancellation) =>
        Download($"{name}.zip", zip => One(lesson, zip, cancellation));

    /// <summary>Gives everything to the browser.</summary>
    public Task<IResult> DownloadAll(CancellationToken cancellation) =>
        Download($"calx-{Dates.ForField(Dates.Today(clock))}.zip", zip => Everything(zip, cancellation));

    private async Task One(Lesson lesson, Stream zip, CancellationToken cancellation)
    {
        await LessonArchive.WriteLesson(store, lesson.Id, zip, TableNames.Of, cancellation);
        PracticalFiles.Add(zip, own.Files(lesson.PracticalId));
    }

    private async Task Everything(Stream zip, CancellationToken cancellation)
    {
        await LessonArchive.WriteAll(store, zip, TableNames.Of, cancellation);
        PracticalFiles.Add(zip, own.Files());
    }

    /// <summary>By way of a file, so that a download is whole or fails, and is as long as it says.</summary>
    private static async Task<IResult> Download(string name, Func<Stream, Task> write)
    {
        var file = new FileStream(
            Path.GetTempFileName(), FileMode.Create, FileAccess.ReadWrite, FileShare.None, BufferBytes, FileOptions.DeleteOnClose | FileOptions.Asynchronous);
        try
        {
            await write(file);
            file.Position = 0;
            return Results.File(file, ZipType, name);
        }
        catch
        {
            await file.DisposeAsync();
            throw;
        }
    }

    /// <summary>Under its own name only once it is whole.</summary>
    private async Task<SavedFile> Save(string folder, string name, Func<string, Task> write)
    {
        string time = clock.GetLocalNow().ToString("yyyy-MM-dd-HHmmss-fff", CultureInfo.InvariantCulture);
        string path = Path.Combine(folder, $"{time}-{name}");
        string unfinished = $"{path}.part";
        try
        {
            Directory.CreateDirectory(folder);
            await write(unfinished);
            File.Move(unfinished, path);
            return new SavedFile(path, null);
        }
        catch (Exception failure) when (failure is IOException or UnauthorizedAccessException)
        {
            return new SavedFile(null, $"Nothing was changed, because {path} could not be written: {failure.Message}");
        }
        finally
        {
            Drop(unfinished);
        }
    }

    private static async Task Whole(string path, Func<Stream, Task> write)
    {
        await using var file = new FileStream(path, FileMode.Create, FileAccess.ReadWrite, FileShare.None, BufferBytes, useAsync: true);
        await write(file);
        file.Flush(flushToDisk: true);
    }

    private static void Drop(string unfinished)
    {
        try
        {
            File.Delete(unfinished);
        }
        catch (Exception failure) when (failure is IOException or UnauthorizedAccessException)
        {
            // What could not be written cannot be taken away either; its name says that it is no whole file.
        }
    }
}
