using Calx.Chemistry.Elements;
using Calx.Measurement.Numbers;
using Calx.Practicals.Definition;
using Calx.Practicals.Marking;

namespace Calx.Engine.Tests.Practicals.Marking;

/// <summary>Hand-made work on the magnesium practical, marked with Mg 24.3, O 16.0.</summary>
internal static class Given
{
    public static Practical Magnesium { get; } = BuiltInPracticals.Find("magnesium-oxide")!;

    public static Marker Marker(IReadOnlyCollection<string>? asked = null) => new(Magnesium, MarkingPolicy.Usual, [AtomicWeightSets.Named("school-1dp")], asked);

    /// <summary>A student's work.</summary>
    /// <param name="readings">empty, before, after and further weighings after heating, blanks between them.</param>
    /// <param name="answers">Id and answer by turns.</param>
    public static StudentWork Work(string readings, params string[] answers) => Of("14", null, readings, answers);

    public static StudentWork Of(string student, string? group, string readings, params string[] answers)
    {
        WrittenNumber[] read = [.. readings.Split(' ').Select(r => WrittenNumber.TryParse(r, out WrittenNumber number) ? number : throw new ArgumentException(r))];
        var byId = new Dictionary<string, IReadOnlyList<WrittenNumber>> { ["empty"] = [read[0]], ["before"] = [read[1]], ["after"] = read[2..] };
        return new StudentWork(student, byId, answers.Chunk(2).ToDictionary(a => a[0], a => a[1]), group: group);
    }

    public static AnswerMark Mark(StudentWork work, string id) => Marker().Mark([work]).Works[0].Answers.Single(a => a.Answer.Id == id);

    /// <summary>The leading idea behind a wrong answer, or null.</summary>
    public static string? Idea(AnswerMark mark) => mark.Ideas?.Candidates is [var first, ..] ? first.Ideas[0].Id : null;
}
