using System.CommandLine;
using System.Globalization;
using Calx.App.Input;
using Calx.App.Live;
using Calx.App.Output;
using Calx.App.Pages;
using Calx.App.Serving;
using Calx.Papers.Documents;
using Calx.Papers.Handouts;
using Calx.Papers.Week;
using Calx.Records.Storage;

namespace Calx.App.Commands;

/// <summary><c>calx papers week</c>: what the lessons of a week want from the technician.</summary>
internal static class WeekCommand
{
    private const string Name = "papers week";

    public static Verb Create()
    {
        var records = new RecordsChoice();
        var papers = new PapersOptions();
        var from = new Option<string?>("--from") { Description = "a day of the week, such as 2026-11-26; otherwise this week", HelpName = "DATE" };
        var verb = new Verb(
            "week",
            "What the lessons of a week want from the technician: a day at a time, what is wanted at one time, minutes of preparation, what the week uses up.",
            [
                new("calx papers week --out papers", "this week, from your own records"),
                new("calx papers week --data school --from 2026-11-23 --out papers --format docx", "the week of that day, for a word processor"),
            ],
            (result, surroundings) => Run(records.Options(result, Name, surroundings), result.GetValue(from), papers.Words(result), surroundings),
            "It may run while 'calx serve' does. A file that is there already is left as it is: exit code 2. Exit code 1 where lessons of one period together want more than is there.");
        foreach (Option option in (Option[])[from, .. papers.OfSheets, .. records.All])
        {
            verb.Options.Add(option);
        }

        return verb;
    }

    private static int Run(ServeOptions? options, string? from, PapersWords words, Surroundings surroundings)
    {
        if (options is null || (Fault(options, from, words) is string fault && Tell(fault, surroundings)) || words.Order(surroundings) is not PapersOrder order)
        {
            return ExitCode.BadInput;
        }

        return RecordsChoice.Open(options, Name, surroundings, (store, cancellation) => Write(store, DayOf(from), order, surroundings, cancellation)).GetAwaiter().GetResult();
    }

    private static async Task<int> Write(RecordStore store, DateOnly? from, PapersOrder order, Surroundings surroundings, CancellationToken cancellation)
    {
        DateOnly today = Dates.Today(RecordsChoice.Clock);
        WeekOfRecords found = await WeekOfRecords.Of(store, TechnicianWeek.MondayOf(from ?? today), cancellation);
        Paper sheet = WeekSheet.Of(found.Week, Dates.Day(today), order.Look);
        int code = PaperFiles.Write(PaperSet.Of([sheet]), order, surroundings);
        foreach (string warning in found.Unread.Concat(found.Week.Warnings))
        {
            surroundings.Error.WriteLine($"calx {Name}: {warning}");
        }

        return code == ExitCode.Done && found.Week.Warnings.Count > 0 ? ExitCode.No : code;
    }

    private static string? Fault(ServeOptions options, string? from, PapersWords words) =>
        words.Out is null ? $"calx {Name}: into which folder? For example: calx {Name} --out papers"
        : from is not null && DayOf(from) is null ? $"calx {Name}: --from: '{from}' is no day; a date such as 2026-11-26 was expected"
        : RecordsChoice.Missing(options, Name);

    private static DateOnly? DayOf(string? text) =>
        DateOnly.TryParseExact(text, "yyyy-MM-dd", CultureInfo.InvariantCulture, DateTimeStyles.None, out DateOnly day) && day.Year is > 1900 and < 9000 ? day : null;

    private static bool Tell(string fault, Surroundings surroundings)
    {
        surroundings.Error.WriteLine(fault);
        return true;
    }
}
