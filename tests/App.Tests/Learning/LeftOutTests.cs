using Calx.App.Demo;
using Calx.App.Learning;
using Calx.App.Live;
using Calx.App.Serving;
using Calx.App.Tests.Serving;
using Calx.Practicals.Definition;
using Calx.Practicals.Learning;
using Calx.Records.Journal;
using Calx.Records.Lessons;
using Microsoft.Extensions.DependencyInjection;

namespace Calx.App.Tests.Learning;

/// <summary>From what nothing is learned.</summary>
public sealed class LeftOutTests
{
    private static CancellationToken Cancel => TestContext.Current.CancellationToken;

    [Fact]
    public async Task Simulated_readings_cover_lessons_and_lessons_that_go_on_teach_nothing()
    {
        var clock = new ShiftedClock();
        await using OpenHost host = await OpenHost.Start(clock: clock);
        await HeldLessons.Write(host.Store, clock, [18]);
        Lesson held = Assert.Single(await host.Store.Lessons(Cancel));
        Assert.Equal(4, (await Learned(host)).Groups);
        await Append(held, new JournalCell(1, 1, Acts.Condition), new EntryContent.Happening(Acts.Conditions.Simulated));
        SchoolClass school = await HeldLessons.Class(host.Store, "9X");
        Lesson cover = await HeldLessons.Make(host.Store, school, new DateOnly(2026, 5, 5));
        await Append(cover, new JournalCell(0, 1, Acts.Cover), new EntryContent.Happening(LessonState.Yes));
        await Append(cover, new JournalCell(0, 1, Acts.Began), new EntryContent.Happening(""));
        await Append(cover, new JournalCell(0, 1, Acts.Ended), new EntryContent.Happening(""));
        Lesson goesOn = await HeldLessons.Make(host.Store, school, new DateOnly(2026, 5, 6));
        await Append(goesOn, new JournalCell(0, 1, Acts.Began), new EntryContent.Happening(""));
        Learned learned = await Learned(host);
        Assert.Equal((1, 3), (learned.Lessons, learned.Groups));
        Assert.Equal("Left out: one cover lesson with simulated readings, one that is not over.", learned.LeftInWords);
        Assert.All(learned.Priors.Changes.OfType<LearnedChange.Rate>().Where(r => !r.IsBreakage), r => Assert.Equal(3, r.Cases));

        async Task Append(Lesson lesson, JournalCell cell, EntryContent content) => Assert.IsType<AppendResult.Added>(await host.Store.Append(
            lesson.Id, new JournalEntry(NewEntryId.Draw(), cell, content, Visitor.TeachersDevice, clock.GetUtcNow()), Cancel));
    }

    /// <summary>Asked of a fresh look at the records, which another program may have changed.</summary>
    private static async Task<Learned> Learned(OpenHost host)
    {
        using var rooms = new LessonRooms(host.Store);
        using var school = new KnownBalances(host.Store);
        return await new PastLessons(host.Store, rooms, school, host.Services.GetRequiredService<TimeProvider>())
            .Of(BuiltInPracticals.Find("magnesium-oxide")!, "", 4, Cancel);
    }
}
