using Calx.App.Live;
using Calx.App.Pages.Lessons;
using Calx.App.Pages.Papers;
using Calx.App.Serving;
using Calx.Papers.Documents;
using Calx.Papers.Handouts;
using Calx.Papers.Week;
using Calx.Records.Storage;
using Microsoft.AspNetCore.Builder;
using Microsoft.AspNetCore.Http;
using Microsoft.AspNetCore.Routing;

namespace Calx.App.Pages.Week;

/// <summary>The technician's week: what the lessons of the records want, a day at a time.</summary>
public static class WeekRoutes
{
    public static void Map(IEndpointRouteBuilder routes)
    {
        RouteGroupBuilder week = routes.MapGroup("/week").WithMetadata(Admits.Teacher);
        week.MapGet("", async (string? from, HttpContext context, RecordStore store, TimeProvider clock) =>
        {
            (DateOnly monday, string? fault) = Monday(from, clock);
            return Show.Page<WeekPage>(new WeekModel(await WeekOfRecords.Of(store, monday, context.RequestAborted), Dates.Today(clock), fault));
        });
        week.MapGet("/{name}", async (string name, string? from, HttpContext context, RecordStore store, ServeOptions options, TimeProvider clock) =>
        {
            WeekOfRecords found = await WeekOfRecords.Of(store, Monday(from, clock).Monday, context.RequestAborted);
            Paper sheet = WeekSheet.Of(found.Week, Dates.Day(Dates.Today(clock)), PaperDesk.Look(context.Request.Query), options.Invented);
            return await PaperDesk.File(context, PaperSet.Of([sheet]), name);
        });
    }

    /// <summary>A day within it says which week; none is this one.</summary>
    private static (DateOnly Monday, string? Fault) Monday(string? from, TimeProvider clock)
    {
        DateOnly today = TechnicianWeek.MondayOf(Dates.Today(clock));
        return string.IsNullOrEmpty(from) ? (today, null)
            : NewLessonWords.DayOf(from) is DateOnly day && day.Year is > 1900 and < 9000 ? (TechnicianWeek.MondayOf(day), null)
            : (today, $"‘{(from.Length > 20 ? from[..20] : from)}’ is no day: a date such as 2026-11-25 is expected. This week is shown.");
    }
}
