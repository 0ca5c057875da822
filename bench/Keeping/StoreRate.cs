using System.Diagnostics;
using System.Globalization;
using Calx.Measurement.Numbers;
using Calx.Records;
using Calx.Records.Journal;
using Calx.Records.Lessons;
using Calx.Records.Storage;

namespace Calx.Bench.Keeping;

/// <summary>How many entries a second the records take from thirty writers, each of whom waits till its entry is on the disk, without
/// any web before them.</summary>
internal static class StoreRate
{
    private const int Writers = 30;

    private static readonly TimeSpan Lasting = TimeSpan.FromSeconds(8);

    /// <summary>Measures an SQLite file in the folder for throw-away files, and PostgreSQL where a connection is given.</summary>
    /// <param name="connections">Connections to PostgreSQL databases in which rows may be left.</param>
    public static async Task<int> Measure(string[] connections)
    {
        DirectoryInfo folder = Directory.CreateTempSubdirectory("calx-bench-");
        try
        {
            string file = Path.Combine(folder.FullName, "records.db");
            await Measure("SQLite", file);
            foreach (string connection in connections)
            {
                await Measure("PostgreSQL", connection);
            }

            return 0;
        }
        finally
        {
            folder.Delete(recursive: true);
        }
    }

    private static async Task Measure(string kind, string connection)
    {
        await using RecordStore store = await RecordStore.Open(new StoreSettings(connection, $"bench {Guid.NewGuid():N}"), TimeProvider.System);
        RecordId lesson = await Prepare(store);
        await Write(store, lesson, TimeSpan.FromSeconds(2));
        double[] milliseconds = [.. (await Write(store, lesson, Lasting)).Order()];
        var read = Stopwatch.StartNew();
        int entries = (await store.Entries(lesson)).Count;
        Print(kind, "entries a second", milliseconds.Length / Lasting.TotalSeconds);
        Print(kind, "median / ms", milliseconds[milliseconds.Length / 2]);
        Print(kind, "99 of 100 within / ms", milliseconds[milliseconds.Length * 99 / 100]);
        Print(kind, FormattableString.Invariant($"reading all {entries} entries / ms"), read.Elapsed.TotalMilliseconds);
    }

    private static async Task<RecordId> Prepare(RecordStore store)
    {
        var its = new SchoolClass(RecordId.Draw(), "2026/27", "9F", false);
        var lesson = new Lesson(
            RecordId.Draw(), its.Id, "magnesium-oxide", 1, "id: magnesium-oxide\n", "{}", new DateOnly(2026, 11, 26), "Lab 2", 15, 60, new LessonSettings(false, true, false));
        await store.AddClass(its, "bench");
        await store.AddLesson(lesson, "bench");
        return lesson.Id;
    }

    /// <summary>How long each entry took.</summary>
    private static async Task<IEnumerable<double>> Write(RecordStore store, RecordId lesson, TimeSpan lasting)
    {
        var clock = Stopwatch.StartNew();
        List<double>[] waits = await Task.WhenAll(Enumerable.Range(1, Writers).Select(writer => Task.Run(async () =>
        {
            var milliseconds = new List<double>();
            while (clock.Elapsed < lasting)
            {
                JournalEntry entry = Reading(writer);
                long began = Stopwatch.GetTimestamp();
                await store.Append(lesson, entry);
                milliseconds.Add(Stopwatch.GetElapsedTime(began).TotalMilliseconds);
            }

            return milliseconds;
        })));
        return waits.SelectMany(w => w);
    }

    private static JournalEntry Reading(int writer) => new(
        EntryId.Of(new UInt128((ulong)Random.Shared.NextInt64(), (ulong)Random.Shared.NextInt64(1, long.MaxValue))),
        new JournalCell(((writer - 1) / 2) + 1, 1, "after"),
        new EntryContent.Reading(new WrittenNumber(30.43m), "g", "A", null),
        "phone",
        DateTimeOffset.UnixEpoch);

    private static void Print(string kind, string what, double figure) =>
        Console.WriteLine($"{kind,-12}{what,-40}{figure.ToString(figure < 100 ? "F1" : "F0", CultureInfo.InvariantCulture),10}");
}
