using Calx.Papers.Reports;

namespace Calx.Papers.Documents.Html;

/// <summary>A phrase in HTML.</summary>
internal static class PhraseHtml
{
    public static string Of(Phrase phrase) => string.Concat(phrase.Pieces.Select(piece => piece.Look switch
    {
        PhraseLook.Bold => $"<strong>{Text.OfSentence(piece.Text)}</strong>",
        PhraseLook.Italic => $"<em>{Text.OfSentence(piece.Text)}</em>",
        _ => Text.OfSentence(piece.Text),
    }));
}
