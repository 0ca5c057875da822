using System.Text;
using Calx.Measurement.Numbers;
using Calx.Practicals.Definition;
using Calx.Practicals.Marking;

namespace Calx.Engine.Tests.Practicals.Marking;

/// <summary>
/// 5,000 invented students whose mistakes are known: tests/reference/scripts/simulated_students.py, written without sight of the marker.
/// </summary>
internal static class SimulatedStudents
{
    /// <summary>One student with the truth.</summary>
    /// <param name="Work">What was handed in.</param>
    /// <param name="Practical">Id of the practical.</param>
    /// <param name="Class">The class: another group's readings come from it.</param>
    /// <param name="Kind">What kind of work: right, idea, two-ideas, slip, unexplained.</param>
    /// <param name="Answer">The first written answer where the mistake shows.</param>
    /// <param name="Idea">What was wrong.</param>
    /// <param name="Clash">Other ideas that would have been written the same there.</param>
    public sealed record One(StudentWork Work, string Practical, string Class, string Kind, string Answer, string Idea, string Clash);

    private static readonly Lazy<IReadOnlyList<One>> Read = new(() => [.. Lines("simulated_students.csv").Select(Of)]);

    /// <summary>Every fifth class, or all of them in the long run.</summary>
    public static IEnumerable<IGrouping<string, One>> Classes() =>
        Read.Value.GroupBy(s => s.Class).Where((_, i) => i % 5 == 0 || LongProofs.Cases(0, 1) == 1);

    /// <summary>What a slow marker, written apart from this one, says of each: verdicts by answer, and the total.</summary>
    public static IReadOnlyDictionary<string, IReadOnlyDictionary<string, string>> ReferenceMarks() =>
        Lines("reference_marks.csv").ToDictionary(row => row["student"]);

    private static One Of(IReadOnlyDictionary<string, string> row)
    {
        Practical practical = BuiltInPracticals.Find(row["practical"])!;
        var readings = practical.Readings.ToDictionary(
            r => r.Id,
            r => (IReadOnlyList<WrittenNumber>)[.. new[] { row.GetValueOrDefault(r.Id, ""), row.GetValueOrDefault($"{r.Id} 2", "") }
                .Where(t => t.Length > 0).Select(t => WrittenNumber.TryParse(t, out WrittenNumber number) ? number : throw new FormatException(t))]);
        var answers = practical.Answers.ToDictionary(a => a.Id, a => row.GetValueOrDefault(a.Id, ""));
        return new One(new StudentWork(row["student"], readings, answers), practical.Id, row["class"], row["kind"], row["answer"], row["idea"], row["clash"]);
    }

    private static IEnumerable<IReadOnlyDictionary<string, string>> Lines(string file)
    {
        string[] lines = File.ReadAllLines($"reference/computed/{file}");
        string[] head = [.. Cells(lines[0])];
        return lines.Skip(1).Select(line => head.Zip(Cells(line)).ToDictionary(c => c.First, c => c.Second));
    }

    private static IEnumerable<string> Cells(string line)
    {
        var cell = new StringBuilder();
        bool quoted = false;
        foreach (char c in line)
        {
            if (c == '"')
            {
                quoted = !quoted;
            }
            else if (c == ',' && !quoted)
            {
                yield return cell.ToString();
                cell.Clear();
            }
            else
            {
                cell.Append(c);
            }
        }

        yield return cell.ToString();
    }
}
