using Calx.Practicals.Marking.Ideas;

namespace Calx.Practicals.Marking;

/// <summary>How widespread an idea is in a class.</summary>
/// <param name="Idea">The idea.</param>
/// <param name="Share">Share of the students behind one of whose answers it probably lies: each counts with the probability; 0 to 1.</param>
/// <param name="Students">Those behind one of whose answers it lies more probably than not.</param>
public sealed record IdeaShare(Idea Idea, double Share, IReadOnlyList<string> Students)
{
    /// <summary>Shares below this are one doubtful match in a class.</summary>
    private const double Least = 0.005;

    internal static IEnumerable<IdeaShare> Of(IReadOnlyList<MarkedWork> works) =>
        works.Count == 0 ? [] : KnownIdeas.All
            .Select(idea =>
            {
                (string Student, double Probability)[] each = [.. works.Select(w => (w.Work.Student, Probability(w, idea)))];
                return new IdeaShare(idea, each.Sum(e => e.Probability) / works.Count, [.. each.Where(e => e.Probability > 0.5).Select(e => e.Student)]);
            })
            .Where(s => s.Share >= Least)
            .OrderByDescending(s => s.Share).ThenBy(s => s.Idea.Id, StringComparer.Ordinal);

    /// <summary>How probable it is that an idea lies behind one of a student's answers: as for the answer where it is most so.</summary>
    internal static double Probability(MarkedWork work, Idea idea) => work.Answers.Select(a =>
        a.Ideas?.Candidates.Where(c => c.Ideas.Contains(idea)).Sum(c => c.Probability) ?? 0).DefaultIfEmpty().Max();
}
