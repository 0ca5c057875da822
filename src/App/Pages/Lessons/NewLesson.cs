using System.Globalization;
using Calx.App.Input;
using Calx.App.Learning;
using Calx.App.Live;
using Calx.App.Pages.Classes;
using Calx.App.Pages.Practicals;
using Calx.App.Serving;
using Calx.Practicals.Definition;
using Calx.Records;
using Calx.Records.Lessons;
using Calx.Records.Storage;
using Microsoft.AspNetCore.Http;

namespace Calx.App.Pages.Lessons;

/// <summary>Makes a lesson of a plan.</summary>
public static class NewLesson
{
    /// <summary>The form.</summary>
    public static async Task<IResult> Ask(string? practical, HttpContext context, Shelf shelf, RecordStore store, TimeProvider clock)
    {
        PlanForm? form = practical is not null && shelf.Find(practical) is Practical chosen
            ? PlanForm.Of(chosen, context.Request.Query, await PlanNumbers.Now(store, chosen, context.RequestAborted)) : null;
        return form is { Choice: null }
            ? Show.See($"/practicals/{form.Practical.Id}{context.Request.QueryString}")
            : await Page(form, NewLessonWords.Usual(Dates.Today(clock)), null, shelf, store, context.RequestAborted);
    }

    /// <summary>Makes it, with its class where that is new, and shows it.</summary>
    public static async Task<IResult> Make(HttpContext context, Shelf shelf, RecordStore store)
    {
        FormFields fields = await FormFields.Of(context);
        if (shelf.Find(fields["practical"]) is not Practical practical)
        {
            return Show.Nothing("practical");
        }

        PlanNumbers numbers = await PlanNumbers.Now(store, practical, context.RequestAborted);
        PlanForm form = PlanForm.Of(practical, fields["plan"], numbers);
        NewLessonWords words = NewLessonWords.Of(fields);
        string? fault = form.Choice is null ? "The plan has a fault; put that right first." : words.Fault;
        RecordId classId = default;
        if (fault is null)
        {
            (classId, fault) = await ClassOf(words, store, context.RequestAborted);
        }

        if (fault is null)
        {
            string className = (await store.FindClass(classId, context.RequestAborted))?.Name ?? words.Name;
            Lesson lesson = Lesson(form, words, classId, numbers.OfLesson(form.Words.Numbers, className));
            fault = (await store.AddLesson(lesson, Visitor.TeachersDevice, context.RequestAborted)).Fault();
            if (fault is null)
            {
                return Show.See($"/lessons/{lesson.Id}");
            }
        }

        return await Page(form, words, fault, shelf, store, context.RequestAborted, StatusCodes.Status400BadRequest);
    }

    private static async Task<(RecordId Id, string? Fault)> ClassOf(NewLessonWords words, RecordStore store, CancellationToken cancellation)
    {
        if (!words.IsNew)
        {
            return (RecordId.Parse(words.Class), null);
        }

        // The form may be sent twice: a class of that name and year is the one that is meant.
        SchoolClass? there = (await store.Classes(cancellation))
            .FirstOrDefault(c => c.Year == words.Year && string.Equals(c.Name, words.Name, StringComparison.OrdinalIgnoreCase));
        if (there is not null)
        {
            return (there.Id, null);
        }

        var made = new SchoolClass(RecordId.Draw(), words.Year, words.Name, namesForgotten: false);
        return (made.Id, (await store.AddClass(made, Visitor.TeachersDevice, cancellation)).Fault());
    }

    /// <summary>With the practical and the plan as they are now: a later change of either does not reach it.</summary>
    private static Lesson Lesson(PlanForm form, NewLessonWords words, RecordId classId, AcceptedNumbers? learned)
    {
        PlanWords said = form.Words with { Learned = learned };
        PlanWords plan = words.Settings.Trial ? said with { Groups = 1, Students = 1 } : said;
        return new Lesson(
            RecordId.Draw(),
            classId,
            form.Practical.Id,
            form.Practical.Version,
            form.Practical.SourceText,
            PlanSnapshot.Text(plan),
            words.Day!.Value,
            words.Room,
            plan.Groups,
            (int)Math.Floor(plan.Minutes),
            words.Settings,
            words.Teacher,
            words.Period);
    }

    private static async Task<IResult> Page(
        PlanForm? form, NewLessonWords words, string? fault, Shelf shelf, RecordStore store, CancellationToken cancellation, int status = StatusCodes.Status200OK) =>
        Show.Page<NewLessonPage>(new NewLessonModel(form, shelf.All(), await ClassesRoutes.All(store, cancellation), words, fault), status);
}
