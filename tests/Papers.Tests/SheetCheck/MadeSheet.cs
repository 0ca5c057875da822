using System.Text;
using Calx.Papers.SheetCheck;
using DocumentFormat.OpenXml;
using DocumentFormat.OpenXml.Packaging;
using DocumentFormat.OpenXml.Wordprocessing;

namespace Calx.Papers.Tests.SheetCheck;

/// <summary>
/// An invented worksheet, written as text or as a word processor's file from the same lines. A line that begins with '#' is a heading, one with
/// '|' a row of a table; a row of DOCX may have '&lt;&lt;' in a cell for one that is merged with the cell to its left, and '^^' for one merged
/// with the cell above.
/// </summary>
internal static class MadeSheet
{
    /// <summary>The bytes of a text file.</summary>
    public static byte[] Text(string lines) => Encoding.UTF8.GetBytes(lines);

    /// <summary>The bytes of a DOCX file.</summary>
    public static byte[] Word(string lines) => Word(lines.Split('\n').Select(l => l.Trim()).Where(l => l.Length > 0).ToArray());

    public static Sheet Opened(byte[] file) => Assert.IsType<SheetFile.Opened>(SheetFile.Read(new MemoryStream(file))).Sheet;

    public static string Refused(byte[] file) => Assert.IsType<SheetFile.Fault>(SheetFile.Read(new MemoryStream(file))).Reason;

    /// <summary>A DOCX file with a body of one's own.</summary>
    public static byte[] Word(Action<Body> fill)
    {
        using var stream = new MemoryStream();
        using (var document = WordprocessingDocument.Create(stream, WordprocessingDocumentType.Document))
        {
            var body = new Body();
            document.AddMainDocumentPart().Document = new Document(body);
            fill(body);
        }

        return stream.ToArray();
    }

    private static byte[] Word(string[] lines) => Word(body =>
    {
        for (int i = 0; i < lines.Length; i++)
        {
            if (lines[i][0] != '|')
            {
                body.Append(Paragraph(lines[i]));
                continue;
            }

            var table = new Table();
            for (; i < lines.Length && lines[i][0] == '|'; i++)
            {
                table.Append(Row(lines[i].Trim('|').Split('|').Select(c => c.Trim()).ToArray()));
            }

            body.Append(table);
            i--;
        }
    });

    private static Paragraph Paragraph(string line)
    {
        var paragraph = new Paragraph();
        if (line[0] == '#')
        {
            paragraph.Append(new ParagraphProperties(new ParagraphStyleId { Val = "Heading1" }));
        }

        // In several runs, broken inside words, as word processors keep what was typed and changed.
        string text = line.TrimStart('#', ' ');
        for (int at = 0; at < text.Length; at += 7)
        {
            paragraph.Append(new Run(new Text(text.Substring(at, Math.Min(7, text.Length - at))) { Space = SpaceProcessingModeValues.Preserve }));
        }

        return paragraph;
    }

    private static TableRow Row(string[] cells)
    {
        var row = new TableRow();
        for (int i = 0; i < cells.Length; i++)
        {
            int span = 1 + cells.Skip(i + 1).TakeWhile(c => c == "<<").Count();
            var properties = new TableCellProperties();
            if (span > 1)
            {
                properties.Append(new GridSpan { Val = span });
            }

            if (cells[i] == "^^")
            {
                properties.Append(new VerticalMerge());
            }
            else if (cells[i].StartsWith('v'))
            {
                properties.Append(new VerticalMerge { Val = MergedCellValues.Restart });
            }

            string text = cells[i] == "^^" ? "" : cells[i].TrimStart('v');
            row.Append(new TableCell(properties, text.Length == 0 ? new Paragraph() : Paragraph(text)));
            i += span - 1;
        }

        return row;
    }
}
