using DocumentFormat.OpenXml;
using DocumentFormat.OpenXml.Packaging;
using DocumentFormat.OpenXml.Wordprocessing;

namespace Calx.Papers.Documents.Word;

/// <summary>
/// Writes a paper for a word processor (Office Open XML, ECMA-376): real styles, tables, lists and equations, so that a teacher
/// changes it like a document of their own.
/// </summary>
public static class PaperWord
{
    /// <summary>Writes it.</summary>
    /// <param name="paper">The paper.</param>
    /// <returns>The bytes of a DOCX file; the same for the same paper.</returns>
    public static byte[] Of(Paper paper)
    {
        ArgumentNullException.ThrowIfNull(paper);
        using var bytes = new MemoryStream();
        using (var file = WordprocessingDocument.Create(bytes, WordprocessingDocumentType.Document))
        {
            MainDocumentPart main = file.AddMainDocumentPart();
            var numbering = new WordNumbering();
            var body = new Body();
            main.Document = new Document(body);
            if (paper.Heads.Draft is string draft)
            {
                body.Append(WordText.Paragraph(WordStyles.Draft, draft));
            }

            if (paper.ShowsTitle)
            {
                body.Append(WordText.Paragraph(WordStyles.Title, paper.Title));
            }

            new WordBlocks(main, numbering, WordPage.TextWidthInMillimetres(paper.Look)).Write(body, paper.Content);
            body.Append(WordPage.Section(main, paper));
            WordStyles.Write(main, paper.Look);
            numbering.Write(main);
            WordPage.Settings(main, paper.Look);
            FileProperties.Write(file.AddCoreFilePropertiesPart(), paper.Title.Text, paper.Heads.Foot, paper.Look.Language);
            WordIds.Fix(file);
        }

        return FixedZip.Of(bytes.ToArray());
    }
}
