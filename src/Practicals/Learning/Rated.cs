using Calx.Measurement.Uncertainty;

namespace Calx.Practicals.Learning;

/// <summary>What past lessons say of how often something happens.</summary>
/// <param name="Rate">Posterior mean of the share, 0 to 1; the file's value where there are no lessons.</param>
/// <param name="Interval">90 % interval of the share in this class, or in this school's ordinary classes where the class is new.</param>
/// <param name="Count">90 % interval of how often it happens in the next lesson: the least and most whole numbers.</param>
/// <param name="Tried">How many cases of this school it rests on.</param>
/// <param name="IsOwnClass">Whether earlier lessons of this very class are among them.</param>
internal sealed record Rated(double Rate, CoverageInterval Interval, CoverageInterval Count, int Tried, bool IsOwnClass);
