using Calx.Practicals.Clock;
using Calx.Practicals.Definition;

namespace Calx.Practicals.Planning.Amounts;

/// <summary>How probably a conclusion is reached, rightly and wrongly; what is left is that the readings leave it open.</summary>
/// <param name="Conclusion">The conclusion.</param>
/// <param name="GroupRight">One group reaches it.</param>
/// <param name="GroupWrong">One group is led to something else.</param>
/// <param name="ClassRight">The class reaches it.</param>
/// <param name="ClassWrong">The class is led to something else.</param>
public sealed record ConclusionChance(
    ConclusionDefinition Conclusion, Share GroupRight, Share GroupWrong, Share ClassRight, Share ClassWrong);
