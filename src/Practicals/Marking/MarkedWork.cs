namespace Calx.Practicals.Marking;

/// <summary>What one student handed in, marked.</summary>
/// <param name="Work">What was handed in.</param>
/// <param name="Answers">Each answer asked for, in the practical's order.</param>
/// <param name="Feedback">Two or three sentences for the student: what is right, the one idea to mend, the next step.</param>
public sealed record MarkedWork(StudentWork Work, IReadOnlyList<AnswerMark> Answers, string Feedback)
{
    /// <summary>Marks earned.</summary>
    public int Total => Answers.Sum(a => a.Marks);

    /// <summary>Marks to be earned.</summary>
    public int Of => Answers.Sum(a => a.Answer.Marks);

    internal static MarkedWork From(StudentWork work, IReadOnlyList<AnswerMark> answers) => new(work, answers, Words.StudentFeedback.Of(answers));
}
