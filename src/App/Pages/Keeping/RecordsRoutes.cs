using Calx.App.Pages.Lessons;
using Calx.App.Pages.Practicals;
using Calx.App.Serving;
using Calx.Records.Storage;
using Microsoft.AspNetCore.Builder;
using Microsoft.AspNetCore.Http;
using Microsoft.AspNetCore.Routing;

namespace Calx.App.Pages.Keeping;

/// <summary>The records as a whole.</summary>
public static class RecordsRoutes
{
    /// <summary>Lines of the audit on its page.</summary>
    private const int Lines = 200;

    public static void Map(IEndpointRouteBuilder routes)
    {
        RouteGroupBuilder records = routes.MapGroup("/records").WithMetadata(Admits.Teacher);
        records.MapGet("", (string? done, string? fault, RecordStore store, Exports exports) => Page(store, exports, null, done, fault));
        records.MapGet("/export", (HttpContext context, Exports exports) => exports.DownloadAll(context.RequestAborted));
        records.MapPost("/import", async (HttpContext context, RecordStore store, ServeOptions options, Exports exports) =>
        {
            ImportWords words = await Imports.Take(context, store, options);
            return Page(store, exports, words, null, null, words.IsFault ? StatusCodes.Status400BadRequest : StatusCodes.Status200OK);
        });
        records.MapPost("/backup", BackUp);
        records.MapGet("/audit", async (HttpContext context, RecordStore store, LessonList lessons, Shelf shelf) => Show.Page<AuditPage>(new AuditModel(
            [.. (await store.Audit(Lines, context.RequestAborted)).OrderByDescending(l => l.Number)],
            await AuditNames.Now(store, lessons, shelf, context.RequestAborted))));
    }

    private static async Task<IResult> BackUp(HttpContext context, Exports exports)
    {
        SavedFile saved = await exports.BackUp(context.RequestAborted);
        return Show.See(saved.Fault is string fault
            ? Changes.Saying("/records", "fault", fault) : Changes.Saying("/records", "done", $"Backed up: {saved.Path}"));
    }

    private static IResult Page(RecordStore store, Exports exports, ImportWords? import, string? done, string? fault, int status = StatusCodes.Status200OK) =>
        Show.Page<RecordsPage>(
            new RecordsModel(
                store.Settings.IsPostgres ? "They are kept in PostgreSQL." : $"They are kept in one file: {store.Settings.Connection}", exports.Folder, import, done, fault),
            status);
}
