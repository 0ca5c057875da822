using Calx.Practicals.Marking;

namespace Calx.Papers.Roster;

/// <summary>How far a student's work is marked, in the words of the OneRoster convention.</summary>
internal static class RosterStatus
{
    /// <summary>Nothing was handed in, and the teacher gave no mark.</summary>
    public const string NotSubmitted = "not submitted";

    /// <summary>Something waits for the teacher: words, or an answer that could not be read or marked.</summary>
    public const string PartiallyGraded = "partially graded";

    /// <summary>All of it is marked.</summary>
    public const string FullyGraded = "fully graded";

    public static string Of(MarkedWork work) =>
        !IsHandedIn(work) ? NotSubmitted
        : work.Waiting > 0 || work.Answers.Any(a => a.Overruled is null && a.Verdict is (Verdict.Unreadable or Verdict.CannotMark)) ? PartiallyGraded
        : FullyGraded;

    private static bool IsHandedIn(MarkedWork work) =>
        work.Answers.Any(a => a.Verdict is not Verdict.Missing || a.Overruled is not null) || work.Prose.Any(p => p.Text.Length > 0 || p.Marks > 0 || p.Comment is not null);
}
