using Calx.App.Live;
using Calx.App.Serving;
using Calx.Records.Journal;
using Microsoft.AspNetCore.Http;

namespace Calx.App.Pages.Answers;

/// <summary>Takes an answer from a page without script.</summary>
public static class AnswerWriting
{
    /// <summary>Keeps it and goes on to the next question; where feedback is given at once, back to this one to read it.</summary>
    public static async Task<IResult> Take(HttpContext context, LessonRoom room, Seat seat, AnswersDesk desk)
    {
        FormFields form = await FormFields.Of(context);
        string id = form["what"].Replace(Acts.AnswerPrefix, "", StringComparison.Ordinal);
        using (await room.AnswerTurn(context.RequestAborted))
        {
            LessonView view = await room.Now(context.RequestAborted);
            EntryReading read = FormEntry.Read(form, view, EntryWriter.Of(seat), ServerTime.Of(context));
            string? fault = read.Fault;
            if (read.Entry is JournalEntry entry && await room.Append(Anew(view, entry), context.RequestAborted) is AppendResult.Refused refused)
            {
                fault = refused.Reason;
            }

            if (fault is not null)
            {
                return await desk.Page(view, seat, context.RequestAborted) is AnswersModel model && model.Asked.Any(a => a.Question.Id == id)
                    ? Show.Page<AnswersPage>(model with { Fault = fault, Typed = form["text"], Current = id }, StatusCodes.Status409Conflict)
                    : Show.See("/answers?fault=" + Uri.EscapeDataString(fault));
            }
        }

        AnswersModel? after = await desk.Page(await room.Now(context.RequestAborted), seat, context.RequestAborted);
        return Show.See(after?.Settings.Feedback == FeedbackTime.AtOnce ? $"/answers?q={Uri.EscapeDataString(id)}" : $"/answers?q={Uri.EscapeDataString(Next(after, id))}");
    }

    /// <summary>A form that was gone back to and sent with another answer carries the id of the one before: that one stays as it is.</summary>
    private static JournalEntry Anew(LessonView view, JournalEntry entry) => view.Find(entry.Id) is null ? entry
        : new JournalEntry(
            NewEntryId.Draw(), entry.Cell, entry.Content, entry.Device, entry.TypedAt, view.Table.First(c => c.Cell == entry.Cell).Current.Entry.Id, AnswerEntryReader.Reason);

    /// <summary>The first question behind this one that is not answered, else the first of all that is not.</summary>
    private static string Next(AnswersModel? model, string id)
    {
        AskedOfStudent[] open = [.. (model?.Asked ?? []).Where(a => a.Cell is null)];
        int here = model?.Asked.FirstOrDefault(a => a.Question.Id == id)?.Number ?? 0;
        return (open.FirstOrDefault(a => a.Number > here) ?? open.FirstOrDefault())?.Question.Id ?? AnswersModel.All;
    }
}
