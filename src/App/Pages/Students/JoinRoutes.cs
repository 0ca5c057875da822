using Calx.App.Live;
using Calx.App.Serving;
using Calx.Records.Lessons;
using Microsoft.AspNetCore.Builder;
using Microsoft.AspNetCore.Http;
using Microsoft.AspNetCore.Routing;

namespace Calx.App.Pages.Students;

/// <summary>Where a device joins a lesson: by typing the code, or by the link in the QR code.</summary>
public static class JoinRoutes
{
    private const string NoSuchCode =
        "No lesson is open under that code. Look at the board again; when a lesson has ended, its code ends too.";

    public static void Map(IEndpointRouteBuilder routes)
    {
        routes.MapGet("/join", (HttpContext context, string? gone) =>
            Page(context, "", gone is null ? null : "That lesson is not kept here any more.", StatusCodes.Status200OK)).WithMetadata(Admits.Anybody);
        routes.MapPost("/join", async (HttpContext context, Doors doors, Cookies cookies, GuessLimit guesses) =>
            await Join(context, (await FormFields.Of(context))["code"], doors, cookies, guesses)).WithMetadata(Admits.Anybody);
        routes.MapGet("/j/{code}", (string code, HttpContext context, Doors doors, Cookies cookies, GuessLimit guesses) =>
            Join(context, code, doors, cookies, guesses)).WithMetadata(Admits.Anybody);
    }

    private static async Task<IResult> Join(HttpContext context, string typed, Doors doors, Cookies cookies, GuessLimit guesses)
    {
        string address = context.Connection.RemoteIpAddress?.ToString() ?? "";
        if (!guesses.MayTry(address))
        {
            return Page(context, typed, "Too many wrong codes from here. Wait a minute and try again.", StatusCodes.Status429TooManyRequests);
        }

        string code = JoinCode.Of(typed);
        if (code.Length == 0 || await doors.Find(code, context.RequestAborted) is not LessonDoor door)
        {
            guesses.Missed(address);
            return Page(context, typed, NoSuchCode, StatusCodes.Status404NotFound);
        }

        SeatRole role = code == JoinCode.Of(door.StationCode) ? SeatRole.Station : SeatRole.Joined;
        Seat? had = Gate.VisitorOf(context).Seat;
        // Scanning the code again leaves a device where it is: its group and its name in the journal stay.
        bool stays = had is not null && had.Lesson == door.LessonId && (had.Role == SeatRole.Station) == (role == SeatRole.Station);
        if (!stays)
        {
            string device = had is not null && had.Lesson == door.LessonId ? had.Device : DeviceName.Draw();
            cookies.Give(context, new Seat(door.LessonId, role, 0, device));
        }

        return Show.See(role == SeatRole.Station || (stays && had!.Role == SeatRole.Group) ? "/table" : "/groups");
    }

    private static IResult Page(HttpContext context, string typed, string? fault, int status) =>
        Show.Page<JoinPage>(new JoinModel(typed.Length <= 40 ? typed : "", fault, Gate.VisitorOf(context).Seat is not null), status);
}
