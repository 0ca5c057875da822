using Calx.App.Own;
using Calx.App.Serving;
using Calx.Records.Archive;
using Calx.Records.Storage;
using Microsoft.AspNetCore.Http;
using Microsoft.AspNetCore.Http.Features;
using Microsoft.AspNetCore.WebUtilities;
using Microsoft.Net.Http.Headers;

namespace Calx.App.Pages.Keeping;

/// <summary>Takes in an export that a browser sends: streamed to a file first, never whole in memory, at most 50 MB.</summary>
public static class Imports
{
    private const int Buffer = 64 * 1024;

    /// <summary>What a form adds to the file.</summary>
    private const int FormBytes = 16 * 1024;

    private const int LongestBoundary = 120;
    private const int LongestName = 80;

    /// <summary>Takes it in.</summary>
    public static async Task<ImportWords> Take(HttpContext context, RecordStore store, ServeOptions options)
    {
        if (context.Features.Get<IHttpMaxRequestBodySizeFeature>() is { IsReadOnly: false } limit)
        {
            limit.MaxRequestBodySize = LessonArchive.LargestZip + FormBytes;
        }

        if (Boundary(context.Request) is not string boundary)
        {
            throw new BadHttpRequestException("A form with a file is expected.");
        }

        var reader = new MultipartReader(boundary, context.Request.Body) { HeadersCountLimit = 16, HeadersLengthLimit = 4096 };
        while (await reader.ReadNextSectionAsync(context.RequestAborted) is MultipartSection section)
        {
            if (section.AsFileSection() is { FileStream: Stream file } part && part.FileName.Length > 0)
            {
                return ImportWords.Of(await Read(file, store, options, context.RequestAborted), Name(part.FileName));
            }
        }

        return new ImportWords("Choose a file first: an export of this program, a zip.", [], IsFault: true);
    }

    private static async Task<ImportResult> Read(Stream sent, RecordStore store, ServeOptions options, CancellationToken cancellation)
    {
        await using var file = new FileStream(
            Path.GetTempFileName(), FileMode.Create, FileAccess.ReadWrite, FileShare.None, Buffer, FileOptions.DeleteOnClose | FileOptions.Asynchronous);
        byte[] some = new byte[Buffer];
        int read;
        while ((read = await sent.ReadAsync(some, cancellation)) > 0)
        {
            if (file.Length + read > LessonArchive.LargestZip)
            {
                return new ImportResult.Unreadable($"The file is larger than {LessonArchive.LargestZip / 1024 / 1024} MB.");
            }

            await file.WriteAsync(some.AsMemory(0, read), cancellation);
        }

        file.Position = 0;
        ImportResult result = await LessonArchive.Read(store, file, Visitor.TeachersDevice, cancellation);
        return result is ImportResult.Taken taken ? await new OwnArchive(options.DataFolder).TakeIn(file, taken, cancellation) : result;
    }

    private static string? Boundary(HttpRequest request) =>
        MediaTypeHeaderValue.TryParse(request.ContentType, out MediaTypeHeaderValue? type) && type.MediaType.Equals("multipart/form-data", StringComparison.OrdinalIgnoreCase)
        && HeaderUtilities.RemoveQuotes(type.Boundary).Value is { Length: > 0 and <= LongestBoundary } boundary ? boundary : null;

    private static string Name(string sent)
    {
        string name = Path.GetFileName(sent.Replace('\\', '/'));
        return name.Length <= LongestName ? name : name[..LongestName] + "...";
    }
}
