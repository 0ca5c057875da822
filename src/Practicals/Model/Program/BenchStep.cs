namespace Calx.Practicals.Model.Program;

/// <summary>One event made ready.</summary>
/// <param name="state">The bench; changed.</param>
/// <param name="weighings">Masses without the parts, in g, in the order of weighing.</param>
internal delegate void BenchStep(BenchState state, Span<double> weighings);
