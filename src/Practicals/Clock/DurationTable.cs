using Calx.Measurement.Distributions;
using Calx.Practicals.Definition;

namespace Calx.Practicals.Clock;

/// <summary>The laws of the steps' durations, made once and shared by all plans that are compared. Safe for several threads.</summary>
internal sealed class DurationTable
{
    private readonly System.Collections.Concurrent.ConcurrentDictionary<(double, double, double), Pert> laws = new();

    /// <summary>The law of three times.</summary>
    public Pert Of(StepMinutes minutes) =>
        laws.GetOrAdd((minutes.Least, minutes.Likely, minutes.Most), m => new Pert(m.Item1, m.Item2, m.Item3));
}
