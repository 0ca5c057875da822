namespace Calx.Practicals.Model.Program;

/// <summary>One event made ready.</summary>
/// <param name="state">The bench; changed.</param>
/// <param name="readings">Masses without the parts, in g, and what gauges are at, each in its unit; in the order of reading.</param>
internal delegate void BenchStep(BenchState state, Span<double> readings);
