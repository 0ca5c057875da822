using System.Globalization;
using System.Text.Json.Nodes;
using AngleSharp.Dom;
using Calx.App.Live;
using Calx.App.Serving;
using Calx.App.Tests.Pages.Students;
using Calx.Records.Journal;
using Calx.Records.Lessons;
using Microsoft.Extensions.DependencyInjection;

namespace Calx.App.Tests.Pages.Answers;

/// <summary>The lesson of class 9F with four students on its list: Amir and Beth in group 1, Chen in group 2, Dana in none.</summary>
internal sealed class AnsweringClass : IAsyncDisposable
{
    private static readonly string[] Names = ["Amir", "Beth", "Chen", "Dana"];

    private AnsweringClass(Taught taught) => Taught = taught;

    /// <summary>The lesson.</summary>
    public Taught Taught { get; }

    /// <summary>Its page for the teacher.</summary>
    public string Address => $"/lessons/{Taught.Lesson.Id}";

    /// <summary>Starts it, with group 1's readings: 23.11, 23.35 and 23.49 g.</summary>
    public static async Task<AnsweringClass> Start(bool assessed = false, bool signed = true)
    {
        var lesson = new AnsweringClass(await Taught.Start(assessed, signed: signed));
        foreach ((int index, string name) in Names.Index())
        {
            await lesson.Taught.Host.Store.PutMember(new Member(lesson.Taught.Lesson.ClassId, index + 1, name), "teacher", CancellationToken.None);
        }

        await lesson.Teacher(Acts.SeatOf, "1", 1);
        await lesson.Teacher(Acts.SeatOf, "1", 2);
        await lesson.Teacher(Acts.SeatOf, "2", 3);
        foreach ((string what, string written) in ((string, string)[])[("empty", "23.11"), ("before", "23.35"), ("after", "23.49")])
        {
            await lesson.Write(new JournalCell(1, 1, what), Reading(written));
        }

        return lesson;
    }

    /// <summary>The teacher says something of a student, or of the lesson.</summary>
    public Task Teacher(string what, string text, int member = 0) => Write(new JournalCell(0, 1, what, member), new EntryContent.Happening(text));

    /// <summary>The teacher sets how answers are marked.</summary>
    public async Task Set(MarkingSettings settings) => await (await Taught.Room()).Append(settings.Entry(Entries.NewId(), DateTimeOffset.UtcNow), CancellationToken.None);

    /// <summary>Writes an entry of the teacher's.</summary>
    public async Task Write(JournalCell cell, EntryContent content) => await (await Taught.Room()).Append(
        new JournalEntry(Entries.NewId(), cell, content, Visitor.TeachersDevice, DateTimeOffset.UtcNow), CancellationToken.None);

    /// <summary>A device of a group on which a student answers.</summary>
    public async Task<Device> Answering(int group, int member)
    {
        Device device = await Taught.Device(group);
        await device.Send("/answers/who", ("member", Number(member)));
        return device;
    }

    /// <summary>An answer as the script sends it.</summary>
    public static JsonObject Answer(string id, string text, int member = 1, string? unit = null)
    {
        JsonObject entry = Entries.Happening(Acts.AnswerPrefix + id, text).With("kind", "answer").With("member", member).With("group", 1);
        return unit is null ? entry : entry.With("unit", unit);
    }

    /// <summary>The form of a question on a page.</summary>
    public static IElement Form(IDocument page, string question) => page.QuerySelector($"[data-question='{question}'] form[data-answer]")!;

    /// <summary>Every entry of a student's answer to a question, the oldest first.</summary>
    public async Task<IReadOnlyList<JournalEntry>> Entered(string question, int member = 1) =>
        [.. (await Taught.Journal()).Where(e => e.Cell == new JournalCell(0, 1, Acts.AnswerPrefix + question, member))];

    /// <summary>The answer that counts.</summary>
    public async Task<EntryContent.Answer?> Counts(string question, int member = 1) =>
        (await (await Taught.Room()).Now(CancellationToken.None)).Table
            .FirstOrDefault(c => c.Cell == new JournalCell(0, 1, Acts.AnswerPrefix + question, member))?.Current.Entry.Content as EntryContent.Answer;

    public ValueTask DisposeAsync() => Taught.DisposeAsync();

    private static EntryContent.Reading Reading(string written) =>
        Calx.Measurement.Numbers.WrittenNumber.TryParse(written, out Calx.Measurement.Numbers.WrittenNumber number)
            ? new EntryContent.Reading(number, "g", "A", null) : throw new ArgumentException("No number.", nameof(written));

    private static string Number(int number) => number.ToString(CultureInfo.InvariantCulture);
}
