namespace Calx.Practicals.Marking;

/// <summary>What is said of one answer. The cases are here, and no others.</summary>
public abstract record Verdict
{
    private Verdict()
    {
    }

    /// <summary>It follows from the student's own readings.</summary>
    public sealed record Right : Verdict;

    /// <summary>It rightly uses an earlier answer that is wrong.</summary>
    public sealed record Carried : Verdict;

    /// <summary>It rightly uses values that were rounded further than their figures allow.</summary>
    public sealed record RoundedEarly : Verdict;

    /// <summary>It follows from nothing that is right.</summary>
    /// <param name="Reason">Why an earlier value that was rightly used does not carry, or null where none was.</param>
    public sealed record Wrong(string? Reason) : Verdict;

    /// <summary>Nothing was written.</summary>
    public sealed record Missing : Verdict;

    /// <summary>What was written cannot be read; a person has to look.</summary>
    /// <param name="Reason">Why.</param>
    public sealed record Unreadable(string Reason) : Verdict;

    /// <summary>The student's own readings do not give this value, so there is nothing to mark it by.</summary>
    /// <param name="Reason">What is missing.</param>
    public sealed record CannotMark(string Reason) : Verdict;
}
