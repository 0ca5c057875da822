namespace Calx.Practicals.Readings;

/// <summary>The row of a sheet that names its columns.</summary>
/// <param name="Index">Index of the row in the sheet, from 0.</param>
/// <param name="Cells">Its headings.</param>
/// <param name="IsLong">Whether the table has one row a reading.</param>
internal sealed record HeadingRow(int Index, IReadOnlyList<HeadingCell> Cells, bool IsLong);
