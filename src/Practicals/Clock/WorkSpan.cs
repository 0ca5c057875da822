namespace Calx.Practicals.Clock;

/// <summary>One activity as it went.</summary>
/// <param name="Person">Who.</param>
/// <param name="Tag">What.</param>
/// <param name="Asked">The minute at which it could have begun.</param>
/// <param name="Began">The minute at which it began; later where something was not free or somebody not there.</param>
/// <param name="Ended">The minute at which it ended.</param>
/// <param name="Need">Which need was held, or -1.</param>
internal readonly record struct WorkSpan(int Person, int Tag, double Asked, double Began, double Ended, int Need);
