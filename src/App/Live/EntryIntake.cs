using System.Text.Json;
using Calx.App.Serving;
using Calx.Records.Journal;
using Microsoft.AspNetCore.Http;
using Microsoft.Extensions.DependencyInjection;

namespace Calx.App.Live;

/// <summary>Takes entries that a page sends: a list, each answered for itself, so that one that is wrong holds back no other.</summary>
public static class EntryIntake
{
    /// <summary>Entries in one request; a phone with more sends them in turn.</summary>
    public const int MostAtOnce = 100;

    private const int Deepest = 8;

    /// <summary>Reads the request, keeps what can be kept, and answers.</summary>
    public static async Task<IResult> Take(HttpContext context, LessonRoom room, EntryWriter writer)
    {
        if (!context.Request.HasJsonContentType())
        {
            return Refused("Entries are sent as JSON.");
        }

        JsonDocument document;
        try
        {
            document = await JsonDocument.ParseAsync(
                context.Request.Body, new JsonDocumentOptions { MaxDepth = Deepest }, context.RequestAborted);
        }
        catch (JsonException)
        {
            return Refused("What was sent is not JSON.");
        }

        using (document)
        {
            return document.RootElement.ValueKind == JsonValueKind.Object
                && document.RootElement.TryGetProperty("entries", out JsonElement entries)
                && entries.ValueKind == JsonValueKind.Array && entries.GetArrayLength() <= MostAtOnce
                ? await Keep(entries, room, writer, context)
                : Refused($"An object with a list 'entries' of at most {MostAtOnce} is expected.");
        }
    }

    private static async Task<IResult> Keep(JsonElement entries, LessonRoom room, EntryWriter writer, HttpContext context)
    {
        CancellationToken cancellation = context.RequestAborted;
        // Each answer replaces the one before it, so that they are taken in turn.
        bool isAnswered = entries.EnumerateArray().Any(e => EntryReader.Text(e, "kind") == AnswerEntryReader.Kind);
        using IDisposable? turn = isAnswered ? await room.AnswerTurn(cancellation) : null;
        // What an entry replaces may have come a moment ago; for all others the plan of the lesson is enough.
        bool corrects = isAnswered || entries.EnumerateArray().Any(e => e.ValueKind == JsonValueKind.Object && e.TryGetProperty("replaces", out _));
        LessonView view = corrects ? await room.Now(cancellation) : await room.Lately(cancellation);
        var reader = new EntryReader(view, writer, ServerTime.Of(context));
        // All are handed over before the first is waited for: they go into one commit. The order stays.
        var sent = entries.EnumerateArray().Select(reader.Read)
            .Select(r => (Read: r, Kept: r.Entry is null ? null : room.Append([.. CellDecision.With(view, r.Entry, writer), r.Entry], cancellation))).ToArray();
        var answers = new List<EntryAnswer>(sent.Length);
        foreach ((EntryReading read, Task<AppendResult>? kept) in sent)
        {
            await read.KeepWish(room, cancellation);
            EntryAnswer answer = read.Known ? new EntryAnswer(read.Id, "known", null, null) : kept is null ? new EntryAnswer(read.Id, "refused", read.Fault, null) : Answer(read, await kept);
            bool mayAsk = answer.Result == "added" && !writer.IsTeacher && LookAgain.MayAsk(room, read.Entry!);
            answers.Add(mayAsk ? answer with { Ask = await Question(context, room, read.Entry!) } : answer);
        }

        return Results.Json(new EntryAnswers(answers), EntryAnswersContext.Default.EntryAnswers);
    }

    private static async Task<string?> Question(HttpContext context, LessonRoom room, JournalEntry entry)
    {
        await room.Ready.WaitAsync(context.RequestAborted);
        return LookAgain.Ask(
            await room.Now(context.RequestAborted), entry, await context.RequestServices.GetRequiredService<KnownBalances>().Now(context.RequestAborted));
    }

    private static EntryAnswer Answer(EntryReading read, AppendResult result) => result switch
    {
        AppendResult.Refused refused => new EntryAnswer(read.Id, "refused", refused.Reason, null),
        AppendResult.Known => new EntryAnswer(read.Id, "known", null, null),
        _ => new EntryAnswer(read.Id, "added", null, null),
    };

    private static IResult Refused(string sentence) =>
        Results.Json(new EntryAnswers([new EntryAnswer(null, "refused", sentence, null)]), EntryAnswersContext.Default.EntryAnswers, statusCode: StatusCodes.Status400BadRequest);
}
