namespace Calx.Practicals.Marking.Ideas;

/// <summary>What may lie behind a wrong value: candidates, never a verdict.</summary>
/// <param name="Candidates">The most probable first; may be none.</param>
/// <param name="SomethingElse">Probability that none of the known ideas lies behind it.</param>
/// <param name="TellApart">Id of the earlier answer whose value would tell the leading candidates apart, or null where there is none or no need.</param>
public sealed record IdeaFindings(IReadOnlyList<IdeaCandidate> Candidates, double SomethingElse, string? TellApart);
