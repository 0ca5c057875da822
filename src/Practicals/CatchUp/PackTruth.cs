namespace Calx.Practicals.CatchUp;

/// <summary>What went wrong in a pack.</summary>
/// <param name="Planted">Causes that moved the result by more than counts, the one that moved it most first; empty where all went as expected.</param>
/// <param name="TogetherInGrams">How far the key difference lies from that of a group without faults, in g: what counts and what does not.</param>
public sealed record PackTruth(IReadOnlyList<PlantedCause> Planted, double TogetherInGrams)
{
    /// <summary>Whether a cause other than <c>as-expected</c> is true.</summary>
    public bool IsOdd => Planted.Count > 0;

    /// <summary>Id of the first cause, or <c>as-expected</c>.</summary>
    public string Cause => IsOdd ? Planted[0].Cause : Definition.Causes.AsExpected;
}
