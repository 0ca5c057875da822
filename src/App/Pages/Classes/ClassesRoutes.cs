using System.Globalization;
using Calx.App.Pages.Keeping;
using Calx.App.Pages.Lessons;
using Calx.App.Serving;
using Calx.Records;
using Calx.Records.Lessons;
using Calx.Records.Storage;
using Microsoft.AspNetCore.Builder;
using Microsoft.AspNetCore.Http;
using Microsoft.AspNetCore.Routing;

namespace Calx.App.Pages.Classes;

/// <summary>Classes and their members.</summary>
public static class ClassesRoutes
{
    public static void Map(IEndpointRouteBuilder routes)
    {
        RouteGroupBuilder classes = routes.MapGroup("/classes").WithMetadata(Admits.Teacher);
        classes.MapGet("", async (string? fault, HttpContext context, RecordStore store, TimeProvider clock) =>
            Show.Page<ClassesPage>(new ClassesModel(await All(store, context.RequestAborted), SchoolYear.Of(Dates.Today(clock)), fault)));
        classes.MapPost("", Add);
        classes.MapGet("/{id}", (string id, string? fault, string? done, HttpContext context, RecordStore store, LessonList lessons) =>
            In(id, store, context, async one => Show.Page<ClassPage>(new ClassModel(
                one, await Members(store, one, context), await lessons.Of(one, context.RequestAborted), fault, done))));
        classes.MapPost("/{id}/name", (string id, HttpContext context, RecordStore store) => In(id, store, context, one => Rename(one, context, store)));
        classes.MapPost("/{id}/members", (string id, HttpContext context, RecordStore store) => In(id, store, context, one => AddMembers(one, context, store)));
        classes.MapPost("/{id}/members/names", (string id, HttpContext context, RecordStore store) => In(id, store, context, one => KeepNames(one, context, store)));
        classes.MapGet("/{id}/forget", (string id, string? fault, HttpContext context, RecordStore store, Exports exports) =>
            In(id, store, context, async one => Show.Page<ForgetPage>(new ForgetModel(
                one, (await Members(store, one, context)).Count(m => m.Name.Length > 0), exports.Folder, fault))));
        classes.MapPost("/{id}/forget", (string id, HttpContext context, RecordStore store, Exports exports) =>
            In(id, store, context, one => Forget(one, context, store, exports)));
    }

    /// <summary>All classes, the latest year first.</summary>
    public static async Task<IReadOnlyList<SchoolClass>> All(RecordStore store, CancellationToken cancellation) =>
    [
        .. (await store.Classes(cancellation)).OrderByDescending(c => c.Year, StringComparer.Ordinal).ThenBy(c => c.Name, StringComparer.OrdinalIgnoreCase),
    ];

    /// <summary>Why a name of a class is not taken, or null.</summary>
    public static string? Fault(string year, string name) =>
        year.Length is 0 or > SchoolClass.LongestName ? "A school year such as 2026/27 is expected."
        : name.Length is 0 or > SchoolClass.LongestName ? $"A name of 1 to {SchoolClass.LongestName} characters is expected, such as 9F."
        : null;

    private static async Task<IResult> In(string id, RecordStore store, HttpContext context, Func<SchoolClass, Task<IResult>> answer) =>
        RecordId.TryParse(id, out RecordId classId) && await store.FindClass(classId, context.RequestAborted) is SchoolClass one
            ? await answer(one) : Show.Nothing("class");

    private static async Task<IReadOnlyList<Member>> Members(RecordStore store, SchoolClass one, HttpContext context) =>
        [.. (await store.Members(one.Id, context.RequestAborted)).OrderBy(m => m.Number)];

    private static async Task<IResult> Add(HttpContext context, RecordStore store)
    {
        FormFields form = await FormFields.Of(context);
        (string year, string name) = (NamesPasted.Clean(form["year"]), NamesPasted.Clean(form["name"]));
        if (Fault(year, name) is string fault)
        {
            return Show.See(Changes.Saying("/classes", "fault", fault));
        }

        var one = new SchoolClass(RecordId.Draw(), year, name, namesForgotten: false);
        ChangeResult result = await store.AddClass(one, Visitor.TeachersDevice, context.RequestAborted);
        return Show.See(result.Fault() is string refused ? Changes.Saying("/classes", "fault", refused) : $"/classes/{one.Id}");
    }

    private static async Task<IResult> Rename(SchoolClass one, HttpContext context, RecordStore store)
    {
        string name = NamesPasted.Clean((await FormFields.Of(context))["name"]);
        if (Fault(one.Year, name) is string fault)
        {
            return Back(one, "fault", fault);
        }

        ChangeResult result = await store.RenameClass(one.Id, name, Visitor.TeachersDevice, context.RequestAborted);
        return result.Fault() is string refused ? Back(one, "fault", refused) : Back(one, "done", $"It is called {name} now.");
    }

    private static async Task<IResult> AddMembers(SchoolClass one, HttpContext context, RecordStore store)
    {
        FormFields form = await FormFields.Of(context);
        IReadOnlyList<Member> members = await Members(store, one, context);
        int next = members.Select(m => m.Number).DefaultIfEmpty(0).Max() + 1;
        NamesPasted pasted = form["names"].Length == 0 && int.TryParse(form["count"], NumberStyles.None, CultureInfo.InvariantCulture, out int count)
            && count >= 1 && members.Count + count <= NamesPasted.Most
            ? new NamesPasted([.. Enumerable.Repeat("", count)], null) : NamesPasted.Of(form["names"], members.Count);
        if (pasted.Fault is string fault)
        {
            return Back(one, "fault", fault);
        }

        foreach (string name in pasted.Names)
        {
            await store.PutMember(new Member(one.Id, next++, name), Visitor.TeachersDevice, context.RequestAborted);
        }

        return Back(one, "done", pasted.Names.Count == 1 ? "One member was added." : string.Create(CultureInfo.InvariantCulture, $"{pasted.Names.Count} members were added."));
    }

    private static async Task<IResult> KeepNames(SchoolClass one, HttpContext context, RecordStore store)
    {
        FormFields form = await FormFields.Of(context);
        var changed = new List<Member>();
        foreach (Member member in await Members(store, one, context))
        {
            string field = string.Create(CultureInfo.InvariantCulture, $"m.{member.Number}");
            string name = NamesPasted.Clean(form[field]);
            if (name.Length > Member.LongestName)
            {
                return Back(one, "fault", string.Create(CultureInfo.InvariantCulture, $"The name of number {member.Number} is longer than {Member.LongestName} characters. Nothing was changed."));
            }

            // A field that was not sent says nothing: a page that was loaded before somebody was added loses nobody.
            if (form.Has(field) && name != member.Name)
            {
                changed.Add(new Member(one.Id, member.Number, name));
            }
        }

        foreach (Member member in changed)
        {
            await store.PutMember(member, Visitor.TeachersDevice, context.RequestAborted);
        }

        return Back(one, "done", changed.Count == 0 ? "Nothing was changed." : "The names are kept.");
    }

    private static async Task<IResult> Forget(SchoolClass one, HttpContext context, RecordStore store, Exports exports)
    {
        if ((await FormFields.Of(context))["typed"] != one.Name)
        {
            return Show.See(Changes.Saying(
                $"/classes/{one.Id}/forget", "fault", $"That is not the class's name. Type {one.Name} where the names are to be forgotten."));
        }

        SavedFile saved = await exports.SaveAll(context.RequestAborted);
        if (saved.Fault is string fault)
        {
            return Back(one, "fault", fault);
        }

        ChangeResult result = await store.ForgetNames(one.Id, Visitor.TeachersDevice, context.RequestAborted);
        return result.Fault() is string refused
            ? Back(one, "fault", refused)
            : Back(one, "done", $"The names are forgotten. The export from before is {saved.Path}; delete it where they are to be gone altogether.");
    }

    private static IResult Back(SchoolClass one, string what, string sentence) => Show.See(Changes.Saying($"/classes/{one.Id}", what, sentence));
}
