using System.Globalization;
using System.Net.ServerSentEvents;
using System.Runtime.CompilerServices;
using Calx.App.Serving;
using Calx.Records.Storage;
using Microsoft.AspNetCore.Builder;
using Microsoft.AspNetCore.Http;
using Microsoft.AspNetCore.Routing;

namespace Calx.App.Pages.Keeping;

/// <summary>How the room reaches the program, and the teacher's passphrase.</summary>
public static class RoomRoutes
{
    private static readonly TimeSpan Beat = TimeSpan.FromSeconds(15);

    public static void Map(IEndpointRouteBuilder routes)
    {
        routes.MapGet("/room/hello", (HttpContext context, RoomCheck check) =>
        {
            check.Tell(AddressOf(context), context.Request.Host.ToString());
            return Show.Page<HelloPage>("");
        }).WithMetadata(Admits.Anybody);
        RouteGroupBuilder room = routes.MapGroup("/room").WithMetadata(Admits.Teacher);
        room.MapGet("", (string? fault, string? done, HttpContext context, ServeOptions options, RoomCheck check, TeachersKey key) =>
            Show.Page<RoomPage>(new RoomModel(
                options.OpenToRoom, context.Request.IsHttps, context.Connection.LocalPort, Hello(context, options), check.Last, key.IsSet, fault, done)));
        room.MapGet("/stream", (HttpContext context, RoomCheck check) => TypedResults.ServerSentEvents(Events(check, context.RequestAborted)));
        room.MapGet("/note", (HttpContext context, ServeOptions options, RecordStore store) => Show.Page<NotePage>(new NoteModel(
            options.DataFolder, store.Settings.IsPostgres, options.OpenToRoom, context.Request.IsHttps, context.Connection.LocalPort)));
        room.MapPost("/passphrase", SetPassphrase);
    }

    private static IReadOnlyList<string> Hello(HttpContext context, ServeOptions options) => options.OpenToRoom
        ? [.. RoomAddresses.OfRoom().Select(host => string.Create(
            CultureInfo.InvariantCulture, $"{context.Request.Scheme}://{host}:{context.Connection.LocalPort}/room/hello"))]
        : [];

    private static string AddressOf(HttpContext context) => context.Connection.RemoteIpAddress is { } address
        ? (address.IsIPv4MappedToIPv6 ? address.MapToIPv4() : address).ToString() : "an unknown address";

    private static async IAsyncEnumerable<SseItem<string>> Events(RoomCheck check, [EnumeratorCancellation] CancellationToken cancellation)
    {
        while (!cancellation.IsCancellationRequested)
        {
            Task change = check.Change();
            Task first = await Task.WhenAny(change, Task.Delay(Beat, cancellation));
            yield return new SseItem<string>("", first == change ? "changed" : "beat");
        }
    }

    private static async Task<IResult> SetPassphrase(HttpContext context, TeachersKey key, Cookies cookies, GuessLimit guesses)
    {
        FormFields form = await FormFields.Of(context);
        string address = AddressOf(context);
        bool mustKnow = key.IsAsked && key.IsSet;
        string? fault = mustKnow && !guesses.MayTry(address) ? "Too many wrong passphrases. Wait a minute and try again." : null;
        if (fault is null && mustKnow && !key.Opens(form["present"]))
        {
            guesses.Missed(address);
            fault = "The present passphrase is not right. Nothing was changed.";
        }

        fault ??= Passphrase.Fault(form["passphrase"]) ?? (form["passphrase"] != form["again"] ? "The two do not agree. Nothing was changed." : null);
        if (fault is null)
        {
            await key.Set(form["passphrase"], context.RequestAborted);
            cookies.AdmitTeacher(context, key.Stamp);
        }

        return Show.See(fault is null
            ? Changes.Saying("/room", "done", "The new passphrase is set. Who was signed in elsewhere is asked for it again.")
            : Changes.Saying("/room", "fault", fault));
    }
}
