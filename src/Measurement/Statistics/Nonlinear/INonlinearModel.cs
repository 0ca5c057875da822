namespace Calx.Measurement.Statistics.Nonlinear;

/// <summary>
/// A curve that depends on parameters in any smooth way, at the places where readings were taken. The places belong to the
/// model, so that there may be one or several of them to a reading.
/// </summary>
public interface INonlinearModel
{
    /// <summary>The names of the parameters, in the order in which they are handed over; all different.</summary>
    IReadOnlyList<string> Parameters { get; }

    /// <summary>How many readings the model speaks of.</summary>
    int Points { get; }

    /// <summary>The values of the curve and their derivatives by each parameter.</summary>
    /// <param name="parameters">A value for each parameter.</param>
    /// <param name="values">Receives a value for each point.</param>
    /// <param name="derivatives">Receives the derivatives, those by the first parameter at all points first, then those by
    /// the second: place k · points + i. Empty where only values are wanted.</param>
    /// <returns>False where the curve has no value there, for instance the logarithm of a negative number; then what was
    /// written counts for nothing. A number that is not finite says the same.</returns>
    bool TryEvaluate(ReadOnlySpan<double> parameters, Span<double> values, Span<double> derivatives);
}
