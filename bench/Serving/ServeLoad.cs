using System.Diagnostics;
using System.Globalization;
using System.Net;
using Calx.App.Serving;
using Calx.Records.Storage;
using Calx.Rehearsal;

namespace Calx.Bench.Serving;

/// <summary>The pages under load, as the program that <c>./calx</c> made serves them, on this machine and from this machine.</summary>
/// <param name="program">The built program.</param>
/// <param name="database">A file with the connection string of a PostgreSQL database, or null for SQLite.</param>
internal sealed class ServeLoad(string program, string? database)
{
    private const int Starts = 7;
    private const int Seed = 9_021;
    private static readonly TimeSpan OneLesson = TimeSpan.FromSeconds(45);
    private static readonly TimeSpan ManyLessons = TimeSpan.FromSeconds(25);
    private static readonly TimeSpan Writing = TimeSpan.FromSeconds(10);

    /// <summary>Measures everything and prints it.</summary>
    public static async Task<int> Measure(string[] words)
    {
        if (words.Length == 0)
        {
            Console.Error.WriteLine("usage: serve PROGRAM [CONNECTION-FILE] [start|lesson|writers|lessons ...]");
            return 2;
        }

        string? file = words.Skip(1).FirstOrDefault(File.Exists);
        var load = new ServeLoad(words[0], file);
        Dictionary<string, Func<Task>> parts = new() { ["start"] = load.Start, ["lesson"] = load.Lesson, ["writers"] = load.Writers, ["lessons"] = load.Lessons };
        string[] wanted = [.. words.Where(parts.ContainsKey)];
        foreach (string part in wanted.Length > 0 ? wanted : [.. parts.Keys])
        {
            await parts[part]();
        }

        return 0;
    }

    private async Task Start()
    {
        var seconds = new List<double>();
        using var folder = new ScratchFolder();
        for (int i = 0; i < Starts; i++)
        {
            long began = Stopwatch.GetTimestamp();
            await using RunningProgram running = await RunningProgram.Start(StartOf(folder));
            using HttpClient client = running.Client();
            (await client.GetAsync(new Uri("/", UriKind.Relative))).EnsureSuccessStatusCode();
            seconds.Add(Stopwatch.GetElapsedTime(began).TotalSeconds);
        }

        seconds.Sort();
        Print($"start to first page: median {seconds[Starts / 2]:0.00} s of {Starts} ({seconds[0]:0.00} to {seconds[^1]:0.00})");
    }

    private async Task Lesson()
    {
        using var folder = new ScratchFolder();
        RehearsedLesson lesson = (await Write(folder, 1))[0];
        await using RunningProgram running = await RunningProgram.Start(StartOf(folder));
        using ClassAtWork one = await ClassAtWork.Join(running, lesson);
        Latencies latencies = await Run([one], everySeconds: 3, OneLesson);
        Print($"one lesson, 30 students, a reading every 3 s: {latencies}; {running.ResidentMegabytes:0} MB held");
    }

    private async Task Writers()
    {
        foreach (int atOnce in (int[])[1, 10])
        {
            using var folder = new ScratchFolder();
            RehearsedLesson lesson = (await Write(folder, 1))[0];
            await using RunningProgram running = await RunningProgram.Start(StartOf(folder));
            using ClassAtWork one = await ClassAtWork.Join(running, lesson);
            await WriteFor(one, atOnce, Writing / 2, seed: 1);
            (long began, double processor) = (Stopwatch.GetTimestamp(), running.ProcessorSeconds);
            int kept = await WriteFor(one, atOnce, Writing, Seed);
            double cost = 1e6 * (running.ProcessorSeconds - processor) / kept;
            Print($"30 writers, {atOnce} a request: {kept / Stopwatch.GetElapsedTime(began).TotalSeconds:0} entries a second on the disk, {cost:0} us of processor each; {running.ResidentMegabytes:0} MB held");
        }
    }

    private async Task Lessons()
    {
        foreach (int lessons in (int[])[5, 10, 20, 40, 80])
        {
            using var folder = new ScratchFolder();
            IReadOnlyList<RehearsedLesson> written = await Write(folder, lessons);
            await using RunningProgram running = await RunningProgram.Start(StartOf(folder));
            var classes = new List<ClassAtWork>();
            foreach (RehearsedLesson lesson in written)
            {
                classes.Add(await ClassAtWork.Join(running, lesson));
            }

            double before = running.ProcessorSeconds;
            Latencies latencies = await Run(classes, everySeconds: 20, ManyLessons);
            double share = (running.ProcessorSeconds - before) / ManyLessons.TotalSeconds;
            Print($"{lessons} lessons of 30, a reading every 20 s: {latencies}; {share:0.00} processors, {running.ResidentMegabytes:0} MB held");
            classes.ForEach(c => c.Dispose());
            if (latencies.Quantile(0.99) > 200)
            {
                return;
            }
        }
    }

    private static async Task<Latencies> Run(IReadOnlyList<ClassAtWork> classes, double everySeconds, TimeSpan time)
    {
        // What is compiled or opened at the first use is not what a lesson feels.
        using (var warmUp = new CancellationTokenSource(TimeSpan.FromSeconds(6)))
        {
            await Task.WhenAll(classes.SelectMany((c, i) => c.Work(everySeconds, Seed - (1000 * (i + 1)), new Latencies(), warmUp.Token)));
        }

        var latencies = new Latencies();
        using var stop = new CancellationTokenSource(time);
        await Task.WhenAll(classes.SelectMany((c, i) => c.Work(everySeconds, Seed + (1000 * i), latencies, stop.Token)));
        return latencies;
    }

    private static async Task<int> WriteFor(ClassAtWork one, int atOnce, TimeSpan time, int seed)
    {
        using var stop = new CancellationTokenSource(time);
        return (await Task.WhenAll(one.Phones.Select((p, i) => Task.Run(() => Write(p, atOnce, new Random(seed + i), stop.Token))))).Sum();
    }

    private static async Task<int> Write(Phone phone, int atOnce, Random random, CancellationToken stop)
    {
        int kept = 0;
        while (!stop.IsCancellationRequested)
        {
            TypedEntry[] entries = [.. Enumerable.Range(0, atOnce).Select(_ => TypedEntry.Drawn(random))];
            using HttpResponseMessage answer = await phone.Post(entries);
            kept += answer.StatusCode == HttpStatusCode.OK ? atOnce : 0;
        }

        return kept;
    }

    private async Task<IReadOnlyList<RehearsedLesson>> Write(ScratchFolder folder, int lessons)
    {
        string connection = database is null ? new ServeOptions(folder.FullName).Connection : (await File.ReadAllTextAsync(database)).Trim();
        await using RecordStore store = await RecordStore.Open(new StoreSettings(connection), TimeProvider.System);
        var written = new List<RehearsedLesson>();
        for (int i = 0; i < lessons; i++)
        {
            written.Add(await RehearsedLesson.Write(store, new RehearsalSettings { ClassName = $"9F {Guid.NewGuid():N}"[..12] }));
        }

        return written;
    }

    private ProgramStart StartOf(ScratchFolder folder) =>
        new(folder.FullName) { Program = program, Words = database is null ? [] : ["--database", database] };

    private static void Print(FormattableString line) => Console.WriteLine(line.ToString(CultureInfo.InvariantCulture));
}
