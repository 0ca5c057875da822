using Calx.Rehearsal;

namespace Calx.Bench.Serving;

/// <summary>Thirty students, two to a group, and their teacher's live view, each a device of its own.</summary>
internal sealed class ClassAtWork : IDisposable
{
    private const int Students = 30;

    private readonly List<Phone> phones = [];
    private readonly HttpClient teacher;
    private readonly RehearsedLesson lesson;

    private ClassAtWork(RehearsedLesson lesson, HttpClient teacher) => (this.lesson, this.teacher) = (lesson, teacher);

    /// <summary>Its phones.</summary>
    public IReadOnlyList<Phone> Phones => phones;

    /// <summary>Lets them join.</summary>
    public static async Task<ClassAtWork> Join(RunningProgram program, RehearsedLesson lesson)
    {
        var one = new ClassAtWork(lesson, program.Client());
        for (int i = 0; i < Students; i++)
        {
            one.phones.Add(await Phone.Join(program.Client(), lesson.Code, (i % lesson.Groups) + 1));
        }

        return one;
    }

    /// <summary>Everybody at work: each student sends a reading after about so many seconds, and every page is live.</summary>
    public IEnumerable<Task> Work(double everySeconds, int seed, Latencies latencies, CancellationToken stop)
    {
        yield return new Device(teacher, $"/lessons/{lesson.Id}/stream", $"/lessons/{lesson.Id}/live").Hear(stop);
        foreach ((int index, Phone phone) in phones.Index())
        {
            yield return new Device(phone.Client, "/table/stream", "/table").Hear(stop);
            yield return Device.Type(phone, everySeconds, new Random(seed + index), latencies, stop);
        }
    }

    public void Dispose()
    {
        phones.ForEach(p => p.Dispose());
        teacher.Dispose();
    }
}
