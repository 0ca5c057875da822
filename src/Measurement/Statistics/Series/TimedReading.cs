using Calx.Measurement.Numbers;

namespace Calx.Measurement.Statistics.Series;

/// <summary>A time and what was read then.</summary>
/// <param name="Time">The time as written, in any one unit.</param>
/// <param name="Reading">The reading as written, or null where none was taken at that time.</param>
public readonly record struct TimedReading(WrittenNumber Time, WrittenNumber? Reading);
