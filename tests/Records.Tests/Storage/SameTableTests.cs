using System.Globalization;
using CsCheck;
using Calx.Measurement.Numbers;
using Calx.Records.Journal;
using Calx.Records.Storage;
using Calx.Records.Tests.Places;

namespace Calx.Records.Tests.Storage;

/// <summary>Whatever is sent, in whatever order and however often: the journal in memory, which is short enough to be read, judges
/// both databases.</summary>
public abstract class SameTableTests(Place place)
{
    private const string Seed = "0000KOIPe041";
    private const int Lessons = 40;

    private static readonly string[] Whats = ["empty", "before", "after"];
    private static readonly string[] Numbers = ["30.10", "30.1", "-0.02", "15.437"];

    /// <summary>Few ids, so that some come twice with the same content, some with another, and corrections meet what they correct,
    /// or what is not there, or another cell.</summary>
    private static readonly Gen<Typed[]> Sent = Gen.Select(
        Gen.Int[1, 12],
        Gen.Select(Gen.Int[1, 2], Gen.Int[0, 2]),
        Gen.Int[0, 3],
        Gen.Int[0, 12],
        Gen.Int[0, 3],
        (id, cell, written, replaced, kind) => new Typed(id, cell.Item1, Whats[cell.Item2], Numbers[written], replaced, kind)).Array[1, 25];

    [Fact]
    public async Task One_writer_after_the_other_makes_the_same_journal_and_table_as_in_memory() => await Each(async (store, lesson, sent) =>
    {
        var judge = new LessonJournal();
        foreach (JournalEntry entry in sent)
        {
            Assert.Equal(Said(judge.Append(entry, Sample.Noon)), Said(await store.Append(lesson, entry, Sample.Cancel)));
        }

        Compare(judge, await store.Entries(lesson, 0, Sample.Cancel));
    });

    /// <summary>Several writers at once have no order of their own; that in which they were received must tell all.</summary>
    [Fact]
    public async Task Writers_at_once_make_a_journal_whose_own_order_explains_every_answer() => await Each(async (store, lesson, sent) =>
    {
        AppendResult[] said = await Task.WhenAll(sent.Select(e => Task.Run(() => store.Append(lesson, e, Sample.Cancel))));
        IReadOnlyList<KeptEntry> kept = await store.Entries(lesson, 0, Sample.Cancel);
        var judge = new LessonJournal();
        Assert.All(kept, k => Assert.IsType<AppendResult.Added>(judge.Append(k.Entry, k.ReceivedAt)));
        Compare(judge, kept);
        Assert.Equal(sent.Select(e => e.Id).Distinct().Count(), kept.Count);
        Assert.Equal(kept.Count, said.OfType<AppendResult.Added>().Count());
        // Of two that share an id and differ, one was kept; who sent the other was told.
        Assert.Equal(sent.Select(e => judge.Append(e, Sample.Noon) is AppendResult.Known), said.Select(s => s is not AppendResult.Refused));
    });

    /// <summary>Forty lessons; ids go on from lesson to lesson, since the school has each of them once.</summary>
    private async Task Each(Func<RecordStore, RecordId, JournalEntry[], Task> law)
    {
        await using RecordStore store = await place.OpenFresh();
        await Sample.Prepare(store);
        // All lessons are one sample: the seed fixes the first sample of a run and no more.
        await Sent.Array[Lessons].SampleAsync(
            async lessons =>
            {
                for (int i = 0; i < lessons.Length; i++)
                {
                    RecordId lesson = RecordId.Draw();
                    await Sample.Done(store.AddLesson(Sample.OfId(lesson), Sample.By, Sample.Cancel));
                    int first = 1000 * (i + 1);
                    await law(store, lesson, [.. lessons[i].Select(one => one.Entry(first))]);
                }
            },
            seed: Seed,
            iter: 1,
            threads: 1);
    }

    private static void Compare(LessonJournal judge, IReadOnlyList<KeptEntry> kept)
    {
        Assert.Equal(judge.Entries.Select(e => (e.Number, e.Entry)), kept.Select(e => (e.Number, e.Entry)));
        var read = new LessonJournal();
        foreach (KeptEntry one in kept)
        {
            read.Append(one.Entry, one.ReceivedAt);
        }

        Assert.Equal(judge.Table.Select(Row), read.Table.Select(Row));
    }

    private static (JournalCell Cell, EntryId Current, bool Contested, string Standing) Row(CellState cell) =>
        (cell.Cell, cell.Current.Entry.Id, cell.IsContested, string.Join(' ', cell.Standing.Select(e => e.Number)));

    private static (string Case, long Number) Said(AppendResult result) => result switch
    {
        AppendResult.Added added => ("added", added.Kept.Number),
        AppendResult.Known known => ("known", known.Kept.Number),
        _ => ("refused", 0),
    };

    private sealed record Typed(int Id, int Group, string What, string Written, int Replaced, int Kind)
    {
        public JournalEntry Entry(int first)
        {
            EntryContent content = Kind switch
            {
                0 => new EntryContent.Note(Written),
                1 => new EntryContent.Observation(Written.StartsWith('3')),
                _ => new EntryContent.Reading(new WrittenNumber(decimal.Parse(Written, CultureInfo.InvariantCulture)), "g", null, null),
            };
            bool corrects = Replaced != 0 && Replaced != Id;
            return new JournalEntry(
                Sample.Id(first + Id),
                new JournalCell(Group, 1, What),
                content,
                "phone",
                Sample.Noon,
                corrects ? Sample.Id(first + Replaced) : null,
                corrects ? "looked again" : null);
        }
    }
}
