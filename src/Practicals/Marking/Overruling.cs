using Calx.Practicals.Definition;

namespace Calx.Practicals.Marking;

/// <summary>Marks that the teacher gives in place of those worked out, or for an answer in words. It is kept however often a class is marked again.</summary>
/// <param name="Student">Whose answer.</param>
/// <param name="Answer">Id of the answer, or of the question in words.</param>
/// <param name="Marks">From 0 to the marks that it is worth.</param>
/// <param name="Reason">Why, in the teacher's words; of an answer in words the comment. May be empty.</param>
/// <param name="Given">What was answered when it was decided, or null where that was not kept.</param>
public sealed record Overruling(string Student, string Answer, int Marks, string Reason, string? Given = null)
{
    /// <summary>Why it cannot be used, or null: no such student, no such answer, more marks than there are.</summary>
    internal string? Obstacle(IReadOnlySet<string> students, IReadOnlyDictionary<string, int> marksOf) =>
        !students.Contains(Student) ? $"there is no student '{Student}' among those who are marked"
        : !marksOf.TryGetValue(Answer, out int of) ? $"'{Answer}' is none of the answers that are asked for, which are {string.Join(", ", marksOf.Keys)}"
        : Marks < 0 || Marks > of ? FormattableString.Invariant($"{Marks} marks are given for '{Answer}', which is worth {of}")
        : null;
}
