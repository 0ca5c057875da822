using Calx.Practicals.Definition;

namespace Calx.Practicals.Marking;

/// <summary>The overrulings of a class, by student and answer, and those that fit nothing.</summary>
internal sealed class TeachersMarks
{
    private static readonly IReadOnlyDictionary<string, Overruling> None = new Dictionary<string, Overruling>();

    private readonly Dictionary<string, Dictionary<string, Overruling>> byStudent = new(StringComparer.Ordinal);

    private TeachersMarks(IReadOnlyList<LeftOverruling> left) => Left = left;

    /// <summary>Those that could not be used.</summary>
    public IReadOnlyList<LeftOverruling> Left { get; }

    /// <summary>Sorts them; of several for one answer the last counts.</summary>
    public static TeachersMarks Of(
        IReadOnlyList<Overruling> overrulings, IReadOnlyList<StudentWork> works, IReadOnlyList<AskedAnswer> answers, IReadOnlyList<SheetQuestion> questions, IReadOnlyList<SheetQuestion> onSheet)
    {
        overrulings = [.. overrulings.Select(o => o with { Answer = Meant(o.Answer, answers, onSheet) })];
        HashSet<string> students = [.. works.Select(w => w.Student)];
        var marksOf = answers.Select(a => (a.Id, a.Marks)).Concat(questions.Select(q => (q.Id, Marks: q.Expected.Count))).DistinctBy(m => m.Id)
            .ToDictionary(m => m.Id, m => m.Marks, StringComparer.Ordinal);
        var teachers = new TeachersMarks(
            [.. overrulings.Select(o => (Overruling: o, Reason: o.Obstacle(students, marksOf))).Where(o => o.Reason is not null).Select(o => new LeftOverruling(o.Overruling, o.Reason!))]);
        foreach (Overruling overruling in overrulings.Where(o => o.Obstacle(students, marksOf) is null))
        {
            if (!teachers.byStudent.TryGetValue(overruling.Student, out Dictionary<string, Overruling>? own))
            {
                teachers.byStudent.Add(overruling.Student, own = new(StringComparer.Ordinal));
            }

            own[overruling.Answer] = overruling;
        }

        return teachers;
    }

    /// <summary>The id of what a person calls an answer: the id itself, the label, the question, or 'question 2'.</summary>
    private static string Meant(string said, IReadOnlyList<AskedAnswer> answers, IReadOnlyList<SheetQuestion> questions)
    {
        string folded = Judging.JudgementChoices.Folded(said);
        return answers.FirstOrDefault(a => Judging.JudgementChoices.Folded(a.Id) == folded || Judging.JudgementChoices.Folded(a.Label) == folded)?.Id
            ?? questions.Where((q, i) => Judging.JudgementChoices.Folded(q.Id) == folded || Judging.JudgementChoices.Folded(q.Ask) == folded || folded == FormattableString.Invariant($"question{i + 1}"))
                .FirstOrDefault()?.Id
            ?? said;
    }

    /// <summary>Those of a student, by answer.</summary>
    public IReadOnlyDictionary<string, Overruling> Of(string student) => byStudent.GetValueOrDefault(student) ?? None;
}
