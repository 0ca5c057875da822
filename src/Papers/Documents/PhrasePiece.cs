namespace Calx.Papers.Documents;

/// <summary>A part of a line that looks the same throughout.</summary>
/// <param name="Text">Its text.</param>
/// <param name="Look">How it stands out.</param>
public readonly record struct PhrasePiece(string Text, PhraseLook Look);
