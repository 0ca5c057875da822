namespace Calx.Practicals.Clock;

/// <summary>Says what somebody does next.</summary>
/// <param name="person">Who, from 0.</param>
/// <param name="minute">When the last activity ended.</param>
internal delegate Activity NextActivity(int person, double minute);
