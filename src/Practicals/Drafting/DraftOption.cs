namespace Calx.Practicals.Drafting;

/// <summary>A word that may be answered.</summary>
/// <param name="Word">The word.</param>
/// <param name="Meaning">What it means, for people.</param>
public sealed record DraftOption(string Word, string Meaning);
