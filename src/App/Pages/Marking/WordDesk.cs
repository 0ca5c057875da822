using System.Globalization;
using Calx.App.Live;
using Calx.App.Pages.Lessons;
using Calx.App.Serving;
using Microsoft.AspNetCore.Http;

namespace Calx.App.Pages.Marking;

/// <summary>The answers in words, one at a time, and the comments that go under them.</summary>
public sealed class WordDesk(LessonDesk lessons, LessonMarking marking, CommentTexts comments, TimeProvider clock)
{
    /// <summary>Answers for the lesson of an id, or says that there is none.</summary>
    public async Task<IResult> In(string id, HttpContext context, Func<LessonRoom, Task<IResult>> answer) =>
        await lessons.Room(id, context.RequestAborted) is LessonRoom room ? await answer(room) : Show.Nothing("lesson");

    /// <summary>One of them.</summary>
    /// <param name="room">The lesson.</param>
    /// <param name="place">Where the teacher is.</param>
    /// <param name="written">The comment that is being written, or null for the one that was kept.</param>
    /// <param name="fault">What is wrong, or null.</param>
    /// <param name="cancellation">Gives up.</param>
    public async Task<WordsModel> Model(LessonRoom room, WordPlace place, string? written, string? fault, CancellationToken cancellation)
    {
        LessonMarks marks = await marking.Words(room, cancellation);
        string? only = place.Only is { Length: > 0 } id && room.Practical.Sheet.Questions.Any(q => q.Id == id) ? id : null;
        var queue = new AnswersInWords(marks, only);
        return new WordsModel(
            room.Lesson,
            (await lessons.Class(room, cancellation)).Name,
            room.Practical.Title,
            queue,
            queue.Find(place.At) ?? queue.After(place.After),
            queue.Find(place.After) is { Decision.Overruling: not null, HasChanged: false } last ? last : null,
            AnswersInWords.Questions(marks),
            only,
            await comments.Now(cancellation),
            written,
            fault);
    }

    /// <summary>Takes marks for one and goes on to the next; or, where a comment's button was pressed without script, puts its text in.</summary>
    public async Task<IResult> Give(LessonRoom room, HttpContext context)
    {
        FormFields form = await FormFields.Of(context);
        LessonMarks marks = await marking.Words(room, context.RequestAborted);
        var place = new WordPlace(form["at"], null, form["only"]);
        if (new AnswersInWords(marks, null).Find(place.At) is not WordItem item)
        {
            return Show.See($"/lessons/{room.Lesson.Id}/marking/words?fault={Uri.EscapeDataString("That answer is not among those to be marked any more. Here is the next.")}");
        }

        if (form.Has("insert"))
        {
            return Show.Page<WordsPage>(await Model(room, place, await WithText(form, context.RequestAborted), null, context.RequestAborted));
        }

        string? fault = await new MarkWriter(room, clock).Give(
            item.Work, item.Prose.Question.Id, item.Prose.Of, isWords: true, MarkWish.Of(form), context.RequestAborted);
        WordsModel model = await Model(room, place, form["reason"], fault, context.RequestAborted);
        return fault is null ? Show.See(model.At("after", item.Key)) : Show.Page<WordsPage>(model);
    }

    /// <summary>The comments, to be changed.</summary>
    public async Task<IResult> Comments(LessonRoom room, string? done, HttpContext context) =>
        Show.Page<CommentsPage>(new CommentsModel(Address(room), await comments.Now(context.RequestAborted), new PageSaid(done, null)));

    /// <summary>Keeps the comments.</summary>
    public async Task<IResult> KeepComments(LessonRoom room, HttpContext context)
    {
        FormFields form = await FormFields.Of(context);
        string[] texts = [.. Enumerable.Range(0, CommentTexts.Most).Select(i => form[$"text.{CommentTexts.KeyOf(i)}"])];
        string? fault = await comments.Keep(texts, Visitor.TeachersDevice, context.RequestAborted);
        return fault is null
            ? Show.See(Changes.Saying($"/lessons/{room.Lesson.Id}/marking/comments", "done", "Kept."))
            : Show.Page<CommentsPage>(new CommentsModel(Address(room), texts, new PageSaid(null, fault)));
    }

    private static string Address(LessonRoom room) => $"/lessons/{room.Lesson.Id}/marking";

    private async Task<string> WithText(FormFields form, CancellationToken cancellation)
    {
        IReadOnlyList<string> texts = await comments.Now(cancellation);
        string text = int.TryParse(form["insert"], NumberStyles.None, CultureInfo.InvariantCulture, out int place) && place < texts.Count ? texts[place] : "";
        return string.Join(' ', new[] { form["reason"], text }.Where(t => t.Length > 0));
    }
}
