using Calx.Practicals.Marking.Ideas;

namespace Calx.Practicals.Marking.Judging;

/// <summary>What is said of a judgement.</summary>
/// <param name="Verdict">The verdict.</param>
/// <param name="Expected">What it should have been, or null where that cannot be said.</param>
/// <param name="Ideas">What may lie behind a wrong one.</param>
internal sealed record Judged(Verdict Verdict, string? Expected, IdeaFindings? Ideas = null)
{
    /// <summary>Nothing to judge it by.</summary>
    public static Judged NotMarked(string reason) => new(new Verdict.CannotMark(reason), null);

    /// <summary>Not one of the choices.</summary>
    public static Judged Unreadable(string reason, string? expected) => new(new Verdict.Unreadable(reason), expected);

    /// <summary>Wrong, with the ideas that would lead to it, each with its prior.</summary>
    public static Judged Wrong(string? expected, string given, params IEnumerable<Idea> ideas)
    {
        // Something unknown is about as usual as one of the rarer ideas. Judgement.
        const double Unknown = 0.02;
        return new(new Verdict.Wrong(null), expected, IdeaFindings.Of(ideas.Select(i => new WeighedIdea([i], given, double.NaN, i.Rate, double.NaN)), Unknown, _ => null));
    }
}
