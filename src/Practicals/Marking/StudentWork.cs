using Calx.Measurement.Numbers;
using Calx.Practicals.Inference;

namespace Calx.Practicals.Marking;

/// <summary>What one student hands in: the own readings and what was answered, as written.</summary>
public sealed class StudentWork
{
    /// <summary>Takes them.</summary>
    /// <param name="student">Name or number, as the teacher has it.</param>
    /// <param name="readings">Readings in the order they were taken, by the reading's id; a repeated reading has several.</param>
    /// <param name="answers">Answers as written, by the answer's id; what was left out may be missing or empty.</param>
    /// <param name="row">Where it stands in the teacher's file, for faults; null elsewhere.</param>
    /// <param name="group">The group whose readings these are, or null where that is not known.</param>
    /// <param name="sourcedId">What the school's own system calls the student, or null.</param>
    /// <param name="withoutZeros">Answers from a spreadsheet that does not keep zeros at the end; null for none.</param>
    public StudentWork(
        string student,
        IReadOnlyDictionary<string, IReadOnlyList<WrittenNumber>> readings,
        IReadOnlyDictionary<string, string> answers,
        int? row = null,
        string? group = null,
        string? sourcedId = null,
        IReadOnlySet<string>? withoutZeros = null)
    {
        ArgumentException.ThrowIfNullOrEmpty(student);
        ArgumentNullException.ThrowIfNull(readings);
        ArgumentNullException.ThrowIfNull(answers);
        (Student, Readings, Answers, Row, Group, SourcedId) = (student, readings, answers, row, group, sourcedId);
        WithoutZeros = withoutZeros ?? new HashSet<string>();
    }

    /// <summary>Name or number, as the teacher has it.</summary>
    public string Student { get; }

    /// <summary>Readings in the order they were taken, by id.</summary>
    public IReadOnlyDictionary<string, IReadOnlyList<WrittenNumber>> Readings { get; }

    /// <summary>Answers as written, by id: values, judgements and answers in words.</summary>
    public IReadOnlyDictionary<string, string> Answers { get; }

    /// <summary>Row of the file, from 1, or null.</summary>
    public int? Row { get; }

    /// <summary>The group whose readings these are, or null.</summary>
    public string? Group { get; }

    /// <summary>What the school's own system calls the student, as written, or null.</summary>
    public string? SourcedId { get; }

    /// <summary>Ids of the answers whose zeros at the end may have been lost before the program saw them: no figures are missed in these.</summary>
    public IReadOnlySet<string> WithoutZeros { get; }

    /// <summary>What may be read off the own curve, by the id of the curve's quantity; empty where there is no curve.</summary>
    public IReadOnlyDictionary<string, CurveReadOff> ReadOff { get; init; } = new Dictionary<string, CurveReadOff>();

    /// <summary>What was answered; empty for nothing.</summary>
    internal string Answer(string id) => Answers.GetValueOrDefault(id)?.Trim() ?? string.Empty;
}
