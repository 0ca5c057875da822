namespace Calx.Practicals.CatchUp;

/// <summary>The sensible decision after a heating, from the readings up to there.</summary>
/// <param name="Heating">After which heating, from 1.</param>
/// <param name="Verdict">The decision's word: <c>reheat</c>, <c>constant-mass</c>, <c>cool-and-reweigh</c>, <c>check-reading</c>, <c>cannot-tell</c>.</param>
/// <param name="Why">The reason, a sentence or two for the teacher; may be empty where only the decision was kept.</param>
/// <param name="ProbabilitySpoiled">Probability that the key quantity would still move by more than matters, 0 to 1.</param>
public sealed record PackDecision(int Heating, string Verdict, string Why, double ProbabilitySpoiled)
{
    /// <summary>The word by which a student stops.</summary>
    public const string ConstantMass = "constant-mass";

    /// <summary>Whether the sensible thing is to stop here.</summary>
    public bool Stops => Verdict is ConstantMass or "cannot-tell";
}
