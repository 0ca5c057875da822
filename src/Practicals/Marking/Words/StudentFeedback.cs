using Calx.Practicals.Marking.Ideas;

namespace Calx.Practicals.Marking.Words;

/// <summary>Two or three sentences for one student: what is right, the one idea to mend, the next step. No value that the student did not find is told.</summary>
internal static class StudentFeedback
{
    /// <summary>More would be a list, not a sentence.</summary>
    private const int MostNamed = 3;

    /// <summary>Below it the sentence asks and does not name.</summary>
    private const double NamedFrom = 0.5;

    public static string Of(IReadOnlyList<AnswerMark> marks) =>
        string.Join(' ', new[] { RightOnes(marks), ToMend(marks), NextStep(marks) }.OfType<string>());

    /// <summary>One sentence on one answer.</summary>
    public static string Of(AnswerMark mark) => mark.Verdict switch
    {
        Verdict.Right => mark.Figures == Values.FiguresFault.None && !mark.HasWrongUnit ? "Right." : $"Right; {Watch(mark)}.",
        Verdict.Carried => "Rightly worked out from your earlier value, which is to be mended first.",
        Verdict.RoundedEarly => "Right way; keep more digits until the end.",
        Verdict.Wrong { Reason: string reason } => $"Not right: {reason}.",
        Verdict.Wrong => Idea(mark) is Idea idea ? $"Perhaps {idea.Label}. {idea.Mend}" : mark.Answer is Definition.JudgementAnswer ? "Your readings say otherwise: look at them once more."
            : "Your readings give another value: go through the working once more.",
        Verdict.Missing => "Nothing is written here yet.",
        Verdict.Unreadable unreadable => $"This could not be read: {unreadable.Reason}.",
        Verdict.CannotMark cannot => $"This could not be marked: {cannot.Reason}.",
        _ => throw new System.Diagnostics.UnreachableException(),
    };

    private static string? RightOnes(IReadOnlyList<AnswerMark> marks)
    {
        string[] right = [.. marks.Where(m => m.IsAccepted && !m.IsCarried).Select(m => m.Answer.Label)];
        return right.Length == 0 ? null
            : right.Length == marks.Count ? marks.All(m => m.Answer is Definition.AnswerDefinition) ? "All of your values follow from your readings." : "All of your answers follow from your readings."
            : right.Length <= MostNamed ? $"Right: {Listed(right)}."
            : $"{Number(right.Length)} of {Number(marks.Count, small: true)} {(marks.All(m => m.Answer is Definition.AnswerDefinition) ? "values" : "answers")} are right, {Listed(right[^2..])} among them.";
    }

    private static string? ToMend(IReadOnlyList<AnswerMark> marks)
    {
        AnswerMark? wrong = marks.FirstOrDefault(m => m.Verdict is Verdict.Wrong) ?? marks.FirstOrDefault(m => m.Verdict is Verdict.RoundedEarly);
        if (wrong is null)
        {
            AnswerMark? watched = marks.FirstOrDefault(m => m.IsAccepted && (m.HasWrongUnit || m.Figures != Values.FiguresFault.None));
            return watched is null ? null : $"In ‘{watched.Answer.Label}’ {Watch(watched)}.";
        }

        return $"Look again at ‘{wrong.Answer.Label}’: {(wrong.Verdict is Verdict.Wrong { Reason: string reason } ? reason + "." : Lower(Of(wrong)))}";
    }

    private static string? NextStep(IReadOnlyList<AnswerMark> marks)
    {
        string[] missing = [.. marks.Where(m => m.Verdict is Verdict.Missing).Select(m => m.Answer.Label)];
        return missing.Length == marks.Count ? "Nothing was handed in yet."
            : marks.FirstOrDefault(m => m.Verdict is Verdict.CannotMark) is { Verdict: Verdict.CannotMark cannot } left
                ? $"Not marked: {left.Answer.Label}, for {cannot.Reason}."
            : missing.Length > 0 ? $"Still to do: {Listed(missing.Take(MostNamed))}."
            : marks.Any(m => m.IsCarried) && marks.Any(m => m.Verdict is Verdict.Wrong) ? "What you did with it afterwards was right and counts; put the mended value in and see how far the answer moves."
            : marks.All(m => m.IsAccepted) ? "Next: which of your readings makes the last value most uncertain?"
            : null;
    }

    /// <summary>That a value fits the readings of others is for the teacher's eyes only.</summary>
    private static Idea? Idea(AnswerMark mark) =>
        mark.Ideas?.Candidates is [{ Probability: >= NamedFrom, Ideas: [Idea idea] }, ..] && idea != KnownIdeas.OtherGroup ? idea : null;

    private static string Watch(AnswerMark mark) =>
        mark.HasWrongUnit ? "the unit is to be looked at"
        : mark.Figures == Values.FiguresFault.TooFew ? "it could have more figures"
        : "it has more figures than the readings give";

    private static string Listed(IEnumerable<string> labels)
    {
        string[] all = [.. labels];
        return all.Length == 1 ? all[0] : $"{string.Join(", ", all[..^1])} and {all[^1]}";
    }

    private static string Number(int number, bool small = false)
    {
        string[] words = ["none", "one", "two", "three", "four", "five", "six", "seven", "eight", "nine", "ten", "eleven", "twelve"];
        string word = number < words.Length ? words[number] : number.ToString(System.Globalization.CultureInfo.InvariantCulture);
        return small ? word : char.ToUpperInvariant(word[0]) + word[1..];
    }

    private static string Lower(string sentence) => char.ToLowerInvariant(sentence[0]) + sentence[1..];
}
