namespace Calx.Practicals.Marking.Ideas;

/// <summary>What a wrong working may do with a reading.</summary>
/// <param name="Unit">Its unit: it is taken for another one of the same unit.</param>
/// <param name="Repeats">How often it is taken at most: an earlier one may be taken for the last.</param>
internal readonly record struct ReadingFacts(string Unit, int Repeats);
