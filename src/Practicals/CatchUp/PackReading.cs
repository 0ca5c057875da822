using Calx.Measurement.Numbers;
using Calx.Practicals.Model;

namespace Calx.Practicals.CatchUp;

/// <summary>One weighing of a pack.</summary>
/// <param name="Weighing">Which.</param>
/// <param name="Displayed">What the balance showed, all its decimals there; the student is given this.</param>
/// <param name="TrueMassInGrams">What was to be weighed: contents and all parts that belong on the pan.</param>
/// <param name="ShiftInGrams">By how much a fault let the balance show another mass: warmth, another zero, something foreign, a part left off.</param>
public sealed record PackReading(Weighing Weighing, WrittenNumber Displayed, double TrueMassInGrams, double ShiftInGrams);
