using Calx.App.Live;
using Calx.App.Serving;
using Microsoft.AspNetCore.Http;

namespace Calx.App.Pages.Students;

/// <summary>Finds the lesson of the device that asks. Everything that its pages show comes from its seat, not from the address.</summary>
public static class Seated
{
    /// <summary>Answers in the device's lesson; where that is not kept any more, shows the way out.</summary>
    public static async Task<IResult> In(HttpContext context, LessonRooms rooms, Func<LessonRoom, Seat, Task<IResult>> answer)
    {
        Seat seat = Gate.SeatOf(context);
        if (await rooms.Find(seat.Lesson, context.RequestAborted) is LessonRoom room && seat.Group <= (await room.Lately(context.RequestAborted)).GroupCount)
        {
            return await answer(room, seat);
        }

        Cookies.Leave(context);
        return Show.See("/join?gone=yes");
    }
}
