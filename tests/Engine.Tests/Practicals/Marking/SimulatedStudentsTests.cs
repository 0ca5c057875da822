using Calx.Chemistry.Elements;
using Calx.Practicals.Definition;
using Calx.Practicals.Marking;

namespace Calx.Engine.Tests.Practicals.Marking;

/// <summary>What the marker says of students whose mistakes are known.</summary>
public class SimulatedStudentsTests(ITestOutputHelper output)
{
    private static readonly AtomicWeights[] Sets =
        [.. new[] { "school-1dp", "school-0dp", "school-0dp-cu64", "iupac-abridged" }.Select(AtomicWeightSets.Named)];

    [Fact]
    public void A_right_answer_is_never_marked_wrong()
    {
        (SimulatedStudents.One Student, MarkedWork Marked)[] right = [.. Marked().Where(m => m.Student.Kind == "right")];

        Assert.True(right.Length >= 300);
        Assert.Empty(right.Where(r => r.Marked.Answers.Any(a => a.Verdict is Verdict.Wrong or Verdict.Unreadable or Verdict.CannotMark)).Select(r => r.Student.Work.Student));
    }

    /// <summary>Rounding that the rules accept is no wrong value; of those that are, where no other idea of the list would have been written the same: first in 85 of 100; among the candidates in 97
    /// of 100 of all.</summary>
    [Fact]
    public void The_idea_behind_a_wrong_value_is_found()
    {
        (bool First, bool Among, bool Alone, string Idea, string Student)[] found =
        [
            .. Marked().Where(m => m.Student.Kind == "idea")
                .Select(m => (m.Student, Mark: m.Marked.Answers.Single(a => a.Answer.Id == m.Student.Answer)))
                .Where(m => !(m.Mark.Verdict is Verdict.Right && m.Student.Idea.StartsWith("rounded", StringComparison.Ordinal))).Select(m =>
            {
                AnswerMark mark = m.Mark;
                string[] said = mark.Verdict is Verdict.RoundedEarly
                    ? ["rounded-early"] : [.. mark.Ideas?.Candidates.Select(c => string.Join('+', c.Ideas.Select(i => i.Id))) ?? []];
                return (said is [string first, ..] && first.Split('+').Contains(m.Student.Idea), said.Any(s => s.Split('+').Contains(m.Student.Idea)),
                    m.Student.Clash.Length == 0, m.Student.Idea, m.Student.Work.Student);
            }),
        ];
        foreach (var idea in found.GroupBy(f => f.Idea).OrderBy(g => g.Key))
        {
            output.WriteLine($"{idea.Key}: {idea.Count()}, alone {idea.Count(i => i.Alone)}, first of these {idea.Count(i => i.Alone && i.First)}, among {idea.Count(i => i.Among)}; missed {string.Join(' ', idea.Where(i => !i.Among).Take(4).Select(i => i.Student))}; not first {string.Join(' ', idea.Where(i => i.Alone && !i.First).Take(4).Select(i => i.Student))}");
        }

        double first = (double)found.Count(f => f.Alone && f.First) / found.Count(f => f.Alone), among = (double)found.Count(f => f.Among) / found.Length;
        output.WriteLine($"first {first:P1} of {found.Count(f => f.Alone)}, among {among:P1} of {found.Length}");
        Assert.True(first >= 0.85, $"{first:P1}");
        Assert.True(among >= 0.97, $"{among:P1}");
    }

    /// <summary>tests/reference/scripts/reference_marker.py: exact fractions, the rules of docs/methods/marking.md, no sight of this marker.</summary>
    [Fact]
    public void Marks_are_those_of_a_slow_marker_written_apart()
    {
        IReadOnlyDictionary<string, IReadOnlyDictionary<string, string>> reference = SimulatedStudents.ReferenceMarks();
        string[] differences =
        [
            .. Marked().SelectMany(m => m.Marked.Answers
                .Select(a => (Ours: $"{Word(a.Verdict)}", Theirs: reference[m.Student.Work.Student][a.Answer.Id], At: $"{m.Student.Work.Student} {a.Answer.Id}"))
                .Append((Ours: m.Marked.Total.ToString(System.Globalization.CultureInfo.InvariantCulture), Theirs: reference[m.Student.Work.Student]["total"], At: $"{m.Student.Work.Student} total"))
                .Where(c => c.Ours != c.Theirs).Select(c => $"{c.At}: {c.Ours}, not {c.Theirs}")),
        ];
        output.WriteLine($"{differences.Length} differences");
        Assert.True(differences.Length == 0, string.Join('\n', differences.Take(60)));
    }

    private static string Word(Verdict verdict) => verdict switch
    {
        Verdict.Right => "right",
        Verdict.Carried => "carried",
        Verdict.RoundedEarly => "rounded-early",
        Verdict.Wrong => "wrong",
        Verdict.Missing => "missing",
        _ => verdict.ToString(),
    };

    private static IEnumerable<(SimulatedStudents.One Student, MarkedWork Marked)> Marked()
    {
        var markers = new Dictionary<string, Marker>();
        foreach (IGrouping<string, SimulatedStudents.One> one in SimulatedStudents.Classes())
        {
            string practical = one.First().Practical;
            if (!markers.TryGetValue(practical, out Marker? marker))
            {
                markers[practical] = marker = new Marker(BuiltInPracticals.Find(practical)!, MarkingPolicy.Usual, Sets);
            }

            SimulatedStudents.One[] students = [.. one];
            MarkedClass marked = marker.Mark([.. students.Select(s => s.Work)]);
            for (int i = 0; i < students.Length; i++)
            {
                yield return (students[i], marked.Works[i]);
            }
        }
    }
}
