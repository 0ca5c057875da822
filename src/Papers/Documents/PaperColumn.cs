namespace Calx.Papers.Documents;

/// <summary>A column of a table.</summary>
/// <param name="Heading">Its heading; empty for none.</param>
/// <param name="Share">Its width beside the others.</param>
/// <param name="IsNumber">Whether its cells stand on the right, as numbers do.</param>
public sealed record PaperColumn(Phrase Heading, double Share = 1, bool IsNumber = false);
