using DocumentFormat.OpenXml;
using DocumentFormat.OpenXml.Wordprocessing;

namespace Calx.Papers.Documents.Word;

/// <summary>Paragraphs and their text.</summary>
internal static class WordText
{
    /// <summary>A paragraph in a style.</summary>
    public static Paragraph Paragraph(string style, Phrase text, params OpenXmlElement[] further)
    {
        var properties = new ParagraphProperties(new ParagraphStyleId { Val = style });
        properties.Append(further);
        var paragraph = new Paragraph(properties);
        paragraph.Append(Runs(text));
        return paragraph;
    }

    /// <summary>The runs of a phrase.</summary>
    public static IEnumerable<Run> Runs(Phrase text) => text.Pieces.Select(Run);

    private static Run Run(PhrasePiece piece)
    {
        var run = new Run();
        if (piece.Look != PhraseLook.Plain)
        {
            run.Append(new RunProperties(piece.Look == PhraseLook.Bold ? new Bold() : new Italic()));
        }

        run.Append(new Text(Allowed(piece.Text)) { Space = SpaceProcessingModeValues.Preserve });
        return run;
    }

    /// <summary>Without the characters that XML cannot hold: a name that somebody typed may have any.</summary>
    public static string Allowed(string text) => text.All(System.Xml.XmlConvert.IsXmlChar)
        ? text : string.Concat(text.Select(c => System.Xml.XmlConvert.IsXmlChar(c) ? c : '\uFFFD'));
}
