using System.Globalization;
using Calx.App.Live;
using Calx.App.Serving;
using Calx.App.Tests.Pages.Students;
using Calx.Measurement.Numbers;
using Calx.Records.Journal;
using Calx.Records.Lessons;

namespace Calx.App.Tests.Live;

/// <summary>A lesson of a class with names, into whose journal tests write what students and teacher do.</summary>
internal sealed class Class9F : IAsyncDisposable
{
    private Class9F(Taught taught) => (Taught, Teacher) = (taught, taught.Host.Browser());

    /// <summary>The lesson, four groups.</summary>
    public Taught Taught { get; }

    /// <summary>The teacher's browser.</summary>
    public HttpClient Teacher { get; }

    private static CancellationToken Cancel => TestContext.Current.CancellationToken;

    /// <summary>Starts it.</summary>
    /// <param name="names">The class, by number from 1.</param>
    public static Task<Class9F> Start(params string[] names) => Start(assessed: false, names);

    /// <summary>Starts it.</summary>
    /// <param name="assessed">Whether the lesson is assessed.</param>
    /// <param name="names">The class, by number from 1.</param>
    public static async Task<Class9F> Start(bool assessed, params string[] names)
    {
        Taught taught = await Taught.Start(assessed: assessed);
        for (int i = 0; i < names.Length; i++)
        {
            await taught.Host.Store.PutMember(new Member(taught.Lesson.ClassId, i + 1, names[i]), "teacher", Cancel);
        }

        return new Class9F(taught);
    }

    /// <summary>What is there to be marked now.</summary>
    public async Task<LessonWorks> Works() => LessonWorks.Of(await View(), await Taught.Host.Store.Members(Taught.Lesson.ClassId, Cancel));

    /// <summary>The lesson now.</summary>
    public async Task<LessonView> View() => await (await Taught.Room()).Now(Cancel);

    /// <summary>Puts a member into a group.</summary>
    public Task Seat(int member, int group) => Member(member, Acts.SeatOf, group.ToString(CultureInfo.InvariantCulture));

    /// <summary>Something happens to a member.</summary>
    public Task Member(int member, string what, string text) => Write(new JournalCell(0, 1, what, member), new EntryContent.Happening(text));

    /// <summary>Something happens to a group.</summary>
    public Task Group(int group, string what, string text) => Write(new JournalCell(group, 1, what), new EntryContent.Happening(text));

    /// <summary>A group types a reading.</summary>
    public Task<EntryId> Read(int group, string what, string written, int trial = 1, EntryId? replaces = null) => Write(
        new JournalCell(group, trial, what),
        new EntryContent.Reading(WrittenNumber.TryParse(written, out WrittenNumber number) ? number : throw new ArgumentException(written, nameof(written)), "g", "A", null),
        replaces);

    /// <summary>A student answers.</summary>
    public Task<EntryId> Answer(int member, string id, string text, string? unit = null, EntryId? replaces = null) =>
        Write(new JournalCell(0, 1, Acts.AnswerPrefix + id, member), new EntryContent.Answer(text, unit), replaces, $"d-{member}");

    /// <summary>The teacher gives marks.</summary>
    public Task<EntryId> Mark(int member, string id, int marks, string? comment, EntryId? replaces = null, int of = 1) =>
        Write(new JournalCell(0, 1, Acts.MarkPrefix + id, member), new EntryContent.Mark(marks, of, comment), replaces);

    /// <summary>Writes an entry.</summary>
    public async Task Write(JournalEntry entry) => Assert.IsType<AppendResult.Added>(await (await Taught.Room()).Append(entry, Cancel));

    public async ValueTask DisposeAsync()
    {
        Teacher.Dispose();
        await Taught.DisposeAsync();
    }

    private async Task<EntryId> Write(JournalCell cell, EntryContent content, EntryId? replaces = null, string device = Visitor.TeachersDevice)
    {
        EntryId id = NewEntryId.Draw();
        await Write(new JournalEntry(id, cell, content, device, DateTimeOffset.UnixEpoch, replaces, replaces is null ? null : "put right"));
        return id;
    }
}
