using System.Globalization;
using System.Text.Json;
using Calx.App.Pages;
using Calx.App.Pages.Students;
using Calx.Records.Journal;
using Microsoft.AspNetCore.Http;
using Microsoft.Extensions.DependencyInjection;

namespace Calx.App.Live;

/// <summary>Takes one entry from a plain form: the way of a page without script, and of one-tap buttons. The form carries the
/// entry's id, so that a double click is one entry.</summary>
public static class FormEntry
{
    private static readonly string[] Texts = ["id", "kind", "what", "text", "unit", "written", "balance", "vessel", "replaces", "reason", "typedAt"];
    private static readonly string[] Numbers = ["group", "trial", "member"];

    /// <summary>Keeps it and goes back to the page that the form names, with a fault where it was not taken.</summary>
    public static async Task<IResult> Take(HttpContext context, LessonRoom room, EntryWriter writer)
    {
        FormFields form = await FormFields.Of(context);
        string back = Back(form["back"]);
        LessonView view = await room.Now(context.RequestAborted);
        EntryReading read = Read(form, view, writer, ServerTime.Of(context));
        await read.KeepWish(room, context.RequestAborted);
        string? fault = read.Fault;
        if (read.Entry is JournalEntry typed && form.IsTicked("asks") && form["sure"] != form["written"]
            && DecimalsCheck.Ask(view, await Balances(context, room), typed) is string question)
        {
            string again = $"ask={Uri.EscapeDataString(question)}&typed={Uri.EscapeDataString(form["written"])}&why={Uri.EscapeDataString(form["reason"])}";
            return Show.See($"{back}{(back.Contains('?', StringComparison.Ordinal) ? '&' : '?')}{again}");
        }

        if (read.Entry is JournalEntry entry
            && await room.Append([.. CellDecision.With(view, entry, writer), entry], context.RequestAborted) is AppendResult.Refused refused)
        {
            fault = refused.Reason;
        }

        return Show.See(fault is null ? back : $"{back}{(back.Contains('?', StringComparison.Ordinal) ? '&' : '?')}fault={Uri.EscapeDataString(fault)}");
    }

    /// <summary>The balances of a lesson.</summary>
    public static async Task<IReadOnlyList<BalanceChoice>> Balances(HttpContext context, LessonRoom room) => BalanceChoices.Of(
        await context.RequestServices.GetRequiredService<KnownBalances>().Now(context.RequestAborted), room.Plan);

    /// <summary>Reads it.</summary>
    /// <param name="form">The form.</param>
    /// <param name="view">The lesson.</param>
    /// <param name="writer">Who sends it.</param>
    /// <param name="now">The time, which is when it was typed.</param>
    public static EntryReading Read(FormFields form, LessonView view, EntryWriter writer, DateTimeOffset now)
    {
        var fields = new Dictionary<string, object>(StringComparer.Ordinal);
        foreach (string name in Texts.Where(n => form[n].Length > 0))
        {
            fields[name] = form[name];
        }

        foreach (string name in Numbers)
        {
            if (int.TryParse(form[name], CultureInfo.InvariantCulture, out int number))
            {
                fields[name] = number;
            }
        }

        fields["seen"] = form["seen"] != "no";
        return new EntryReader(view, writer, now).Read(JsonSerializer.SerializeToElement(fields));
    }

    private static string Back(string back) => back is { Length: > 0 and < 300 } && back[0] == '/' && !back.StartsWith("//", StringComparison.Ordinal) ? back : "/";
}
