namespace Calx.Papers.Spreadsheets;

/// <summary>Cells for readings, held to <see cref="ReadingCheck"/>.</summary>
/// <param name="First">The first cell.</param>
/// <param name="Last">The last cell.</param>
/// <param name="IsMass">Whether what is written there was weighed.</param>
internal sealed record CheckedRange(string First, string Last, bool IsMass)
{
    /// <summary>The range as a sheet names it.</summary>
    public string Range => First == Last ? First : $"{First}:{Last}";
}
