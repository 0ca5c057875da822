using Calx.Measurement.Expressions;

namespace Calx.Practicals.Marking.Ideas;

/// <summary>What may lie behind a wrong value: candidates, never a verdict.</summary>
/// <param name="Candidates">The most probable first; may be none.</param>
/// <param name="SomethingElse">Probability that none of the known ideas lies behind it.</param>
/// <param name="TellApart">Id of the earlier answer whose value would tell the leading candidates apart, or null where there is none or no need.</param>
public sealed record IdeaFindings(IReadOnlyList<IdeaCandidate> Candidates, double SomethingElse, string? TellApart)
{
    private const int Most = 6;
    private const double LeastProbability = 0.01;

    /// <summary>A second candidate less probable than this leaves no doubt worth an extra question.</summary>
    private const double MayWellBe = 0.1;

    /// <summary>Puts together what several searches found.</summary>
    internal static IdeaFindings Of(IEnumerable<WeighedIdea> found, double other, Func<(Expression One, Expression Other), string?> tellApart)
    {
        WeighedIdea[] all =
        [
            .. found.GroupBy(f => WeighedIdea.KeyOf(f.Ideas)).Select(same =>
            {
                WeighedIdea best = same.OrderByDescending(f => f.Weight).ThenBy(f => f.Formula, StringComparer.Ordinal).First();
                return best with { Weight = same.Sum(f => f.Weight), Tree = same.Select(f => f.Tree).FirstOrDefault(t => t is not null) };
            }).OrderByDescending(f => f.Weight).ThenBy(f => WeighedIdea.KeyOf(f.Ideas), StringComparer.Ordinal),
        ];
        double whole = other + all.Sum(f => f.Weight);
        WeighedIdea[] first = [.. all.Where(f => f.Weight >= LeastProbability * whole).Take(Most)];
        string? apart = first is [{ Tree: Expression one }, { Tree: Expression another }, ..] && first[1].Weight >= MayWellBe * whole ? tellApart((one, another)) : null;
        return new IdeaFindings(
            [.. first.Select(f => new IdeaCandidate(f.Ideas, MarkingFacts.ForPeople(f.Formula), f.Value, f.Weight / whole, f.Chance))], whole > 0 ? other / whole : 1, apart);
    }
}
