using Calx.Practicals.Model;
using Calx.Practicals.Readings;

namespace Calx.Practicals.Planning;

/// <summary>A group of an invented class.</summary>
/// <param name="Number">From 1.</param>
/// <param name="Readings">What it wrote down, in the readings' units; it reheated until two weighings agreed, so that it may have fewer than others.</param>
/// <param name="Causes">What went wrong in it and counts, the most first; empty where it is as expected.</param>
/// <param name="Series">Mass against time; null where the practical takes none.</param>
public sealed record CoverGroup(int Number, IReadOnlyDictionary<Weighing, decimal> Readings, IReadOnlyList<CoverCause> Causes, GroupSeries? Series = null);
