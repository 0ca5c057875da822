using System.Xml.Linq;
using Calx.Papers.Documents.Word;
using Calx.Papers.Texts;
using DocumentFormat.OpenXml.Packaging;

namespace Calx.Papers.Documents;

/// <summary>What an office program and a list of files show of a document or workbook (ECMA-376 part 2, core properties). Who made it
/// and when is not among it: a paper names no person and no clock.</summary>
internal static class FileProperties
{
    private static readonly XNamespace Core = "http://schemas.openxmlformats.org/package/2006/metadata/core-properties";
    private static readonly XNamespace Dublin = "http://purl.org/dc/elements/1.1/";

    public static void Write(CoreFilePropertiesPart part, string title, string subject, PaperLanguage language)
    {
        var properties = new XElement(
            Core + "coreProperties",
            new XAttribute(XNamespace.Xmlns + "cp", Core),
            new XAttribute(XNamespace.Xmlns + "dc", Dublin),
            new XElement(Dublin + "title", WordText.Allowed(title)),
            new XElement(Dublin + "subject", WordText.Allowed(subject)),
            new XElement(Dublin + "language", language.Tag));
        using Stream stream = part.GetStream(FileMode.Create);
        new XDocument(properties).Save(stream);
    }
}
