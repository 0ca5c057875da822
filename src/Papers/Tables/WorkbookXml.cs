using System.Xml;
using DocumentFormat.OpenXml.Packaging;

namespace Calx.Papers.Tables;

/// <summary>Opens the parts of a workbook for reading from front to back. No entity is expanded and nothing outside the
/// file is fetched; macros are never looked at.</summary>
internal static class WorkbookXml
{
    /// <summary>A reader over a part, bounded by what may still be unpacked.</summary>
    public static XmlReader Open(OpenXmlPart part, ExpansionBudget budget)
    {
        XmlReaderSettings settings = new()
        {
            DtdProcessing = DtdProcessing.Prohibit,
            XmlResolver = null,
            IgnoreComments = true,
            IgnoreProcessingInstructions = true,
            CloseInput = true,
        };
        return XmlReader.Create(new BoundedStream(part.GetStream(FileMode.Open, FileAccess.Read), budget), settings);
    }

    /// <summary>The text of an <c>si</c> or <c>is</c> element, its runs joined and phonetic readings left out; the
    /// reader ends on the closing tag.</summary>
    public static string RichText(XmlReader reader)
    {
        if (reader.IsEmptyElement)
            return "";
        string text = "";
        int depth = reader.Depth;
        int phonetic = 0;
        while (reader.Read() && reader.Depth > depth)
        {
            if (reader.LocalName == "rPh")
                phonetic += reader.NodeType == XmlNodeType.Element && !reader.IsEmptyElement ? 1 : reader.NodeType == XmlNodeType.EndElement ? -1 : 0;
            else if (phonetic == 0 && reader.NodeType is XmlNodeType.Text or XmlNodeType.SignificantWhitespace or XmlNodeType.Whitespace
                && reader.Depth > depth + 1)
            {
                text += reader.Value;
            }
        }
        return text;
    }
}
