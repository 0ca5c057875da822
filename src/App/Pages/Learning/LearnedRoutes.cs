using Calx.App.Input;
using Calx.App.Learning;
using Calx.App.Live;
using Calx.App.Pages.Lessons;
using Calx.App.Pages.Practicals;
using Calx.App.Serving;
using Calx.Practicals.Definition;
using Calx.Records;
using Calx.Records.Lessons;
using Calx.Records.Storage;
using Microsoft.AspNetCore.Builder;
using Microsoft.AspNetCore.Http;
using Microsoft.AspNetCore.Routing;

namespace Calx.App.Pages.Learning;

/// <summary>What past lessons teach of a practical: shown, accepted, taken back, and put into a lesson that has not begun.</summary>
public static class LearnedRoutes
{
    public static void Map(IEndpointRouteBuilder routes)
    {
        RouteGroupBuilder learned = routes.MapGroup("/practicals/{id}/learned").WithMetadata(Admits.Teacher);
        learned.MapGet("", Look);
        learned.MapPost("", Accept);
        learned.MapPost("/back", TakeBack);
        routes.MapPost("/lessons/{id}/learned", PutIntoLesson).WithMetadata(Admits.Teacher);
    }

    private static async Task<IResult> Look(
        string id, string? @class, string? lesson, string? done, string? fault, HttpContext context, Shelf shelf, PastLessons past, RecordStore store)
    {
        if (shelf.Find(id) is not Practical practical)
        {
            return Show.Nothing("practical");
        }

        Lesson? next = RecordId.TryParse(lesson ?? "", out RecordId of) && await store.FindLesson(of, context.RequestAborted) is Lesson found && found.PracticalId == id ? found : null;
        string className = Cut(@class ?? (next is null ? "" : (await store.FindClass(next.ClassId, context.RequestAborted))?.Name ?? ""));
        Learned learned = await past.Of(practical, className, next?.Groups ?? UsualGroups.Of(practical), context.RequestAborted);
        return Show.Page<LearnedPage>(new LearnedModel(learned, await store.Decisions(id, context.RequestAborted), next, new PageSaid(done, fault)));
    }

    private static async Task<IResult> Accept(string id, HttpContext context, Shelf shelf, PastLessons past, NumberDesk desk)
    {
        FormFields fields = await FormFields.Of(context);
        if (shelf.Find(id) is not Practical practical)
        {
            return Show.Nothing("practical");
        }

        string className = Cut(fields["class"]);
        Learned learned = await past.Of(practical, className, UsualGroups.Of(practical), context.RequestAborted);
        Dictionary<string, string?> shown = fields.All("number").Distinct().ToDictionary(n => n, string? (n) => fields[$"value.{n}"]);
        string? fault = await desk.Accept(learned, shown, fields["initials"], Visitor.TeachersDevice, context.RequestAborted);
        return Back(id, fields, fault, "Accepted. The next plans take these numbers, and say so.");
    }

    private static async Task<IResult> TakeBack(string id, HttpContext context, Shelf shelf, NumberDesk desk)
    {
        FormFields fields = await FormFields.Of(context);
        if (shelf.Find(id) is not Practical practical)
        {
            return Show.Nothing("practical");
        }

        // A number is named with the class that it is for: 'time:cool 9F', or 'time:cool' for the school.
        string? fault = fields.All("number").Count == 0 ? "Tick the numbers that you take back." : null;
        foreach (IGrouping<string, string[]> of in fields.All("number").Select(n => n.Split(' ', 2)).GroupBy(n => n.Length > 1 ? n[1] : ""))
        {
            fault ??= await desk.TakeBack(practical, of.Key, [.. of.Select(n => n[0])], fields["takenback"], Visitor.TeachersDevice, context.RequestAborted);
        }

        return Back(id, fields, fault, "Taken back. The next plans take the file’s numbers again; lessons that were made before stay as they are.");
    }

    /// <summary>A lesson that has not begun takes the numbers that hold now.</summary>
    private static async Task<IResult> PutIntoLesson(string id, HttpContext context, LessonDesk desk, RecordStore store, LessonRooms rooms)
    {
        if (await desk.Room(id, context.RequestAborted) is not LessonRoom room)
        {
            return Show.Nothing("lesson");
        }

        string fault = await LessonNumbers.PutInto(room, await desk.Class(room, context.RequestAborted), store, context.RequestAborted) ?? "";
        rooms.OpenAnew(room.Lesson.Id);
        return Show.See(Changes.Saying($"/lessons/{id}", fault.Length > 0 ? "fault" : "done", fault.Length > 0 ? fault : "This lesson’s plan takes the accepted numbers now."));
    }

    private static IResult Back(string id, FormFields fields, string? fault, string done)
    {
        string address = $"/practicals/{Uri.EscapeDataString(id)}/learned?class={Uri.EscapeDataString(Cut(fields["class"]))}";
        address = fields["lesson"].Length > 0 ? $"{address}&lesson={Uri.EscapeDataString(fields.Short("lesson", 20))}" : address;
        return Show.See(fault is null ? Changes.Saying(address, "done", done) : Changes.Saying(address, "fault", fault));
    }

    private static string Cut(string name) => name.Length <= SchoolClass.LongestName ? name.Trim() : name[..SchoolClass.LongestName].Trim();
}
