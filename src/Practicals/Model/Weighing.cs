using Calx.Practicals.Readings;

namespace Calx.Practicals.Model;

/// <summary>One reading of a walk through the procedure: most often a weighing.</summary>
/// <param name="Reading">Id of the practical's reading.</param>
/// <param name="Occurrence">1 for its first time, 2 for the repeat, and so on.</param>
public readonly record struct Weighing(string Reading, int Occurrence)
{
    /// <summary>Id of this weighing: <c>after</c>, then <c>after2</c>.</summary>
    public string Id => TakenReading.IdOf(Reading, Occurrence);
}
