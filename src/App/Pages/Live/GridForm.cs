using System.Globalization;
using System.Text.Json;
using Calx.App.Live;
using Calx.App.Pages.Series;
using Calx.App.Pages.Students;
using Calx.Records.Journal;
using Microsoft.AspNetCore.Http;

namespace Calx.App.Pages.Live;

/// <summary>Takes the teacher's table as a whole, as a page without script sends it: what is new is kept, what has changed is a
/// correction with the reason given.</summary>
public static class GridForm
{
    /// <summary>Keeps it and shows the table again.</summary>
    public static Task<IResult> Take(HttpContext context, LessonRoom room) =>
        Take(context, room, $"/lessons/{room.Lesson.Id}/grid", grid => Show.Page<GridPage>(grid));

    /// <summary>The same for another page with a part of the table.</summary>
    /// <param name="context">The request.</param>
    /// <param name="room">The lesson.</param>
    /// <param name="address">Where the page is.</param>
    /// <param name="asks">Shows the page where something is asked before it is kept.</param>
    public static async Task<IResult> Take(HttpContext context, LessonRoom room, string address, Func<GridModel, IResult> asks)
    {
        FormFields form = await FormFields.Of(context);
        LessonView view = await room.Now(context.RequestAborted);
        var reader = new EntryReader(view, EntryWriter.Teacher, ServerTime.Of(context));
        IReadOnlyList<BalanceChoice> balances = await FormEntry.Balances(context, room);
        var faults = new List<string>();
        var asked = new Dictionary<string, string>(StringComparer.Ordinal);
        string[] points = [.. TypedPoint.Of(view, 1).Select(p => p.Id)];
        foreach (int group in view.Groups)
        {
            int trial = view.State.Group(group).Trial;
            foreach (string id in view.Weighings.Select(w => w.Id).Concat(points))
            {
                string field = string.Create(CultureInfo.InvariantCulture, $"r.{group}.{trial}.{id}");
                string typed = form[field];
                if (Entry(view, group, trial, id, typed, form) is JsonElement json)
                {
                    EntryReading read = reader.Read(json);
                    if (read.Entry is JournalEntry doubted && form[$"sure.{field}"] != typed && DecimalsCheck.Ask(view, balances, doubted) is string question)
                    {
                        asked[field] = typed;
                        faults.Add(string.Create(CultureInfo.InvariantCulture, $"Group {group}, {CellNames.Of(view.Practical, id)}: {question}"));
                        continue;
                    }

                    string? fault = read.Entry is JournalEntry entry
                        ? (await room.Append([.. CellDecision.With(view, entry, EntryWriter.Teacher), entry], context.RequestAborted) as AppendResult.Refused)?.Reason : read.Fault;
                    faults.AddRange(fault is null ? [] : [string.Create(CultureInfo.InvariantCulture, $"Group {group}, {CellNames.Of(view.Practical, id)}: {fault}")]);
                }
            }
        }

        if (asked.Count > 0)
        {
            return asks(new GridModel(await room.Now(context.RequestAborted), string.Join(" ", faults.Take(5)), balances)
            {
                Asked = asked, Reason = form["reason"],
            });
        }

        return Show.See(faults.Count == 0 ? address : $"{address}?fault={Uri.EscapeDataString(string.Join(" ", faults.Take(5)))}");
    }

    /// <summary>What a field adds to the journal; null where it is empty or as it was.</summary>
    private static JsonElement? Entry(LessonView view, int group, int trial, string id, string typed, FormFields form)
    {
        KeptEntry? kept = view.Reading(group, id);
        string was = kept?.Entry.Content is EntryContent.Reading reading ? reading.Written.ToString() : "";
        if (typed.Length == 0 || typed == was)
        {
            return null;
        }

        var fields = new Dictionary<string, object>(StringComparer.Ordinal)
        {
            ["id"] = NewEntryId.Draw().ToString(), ["kind"] = "reading", ["group"] = group, ["trial"] = trial, ["what"] = id, ["written"] = typed,
        };
        if (form[string.Create(CultureInfo.InvariantCulture, $"b.{group}")] is { Length: > 0 } balance)
        {
            fields["balance"] = balance;
        }

        if (kept is not null)
        {
            fields["replaces"] = kept.Entry.Id.ToString();
            fields["reason"] = form["reason"];
        }

        return JsonSerializer.SerializeToElement(fields);
    }
}
