using System.Globalization;
using DocumentFormat.OpenXml.Packaging;

namespace Calx.Papers.Documents.Word;

/// <summary>Gives the parts of a document their ids in order where the library draws them by chance.</summary>
internal static class WordIds
{
    /// <summary>The id of the next part of a document that is referred to.</summary>
    public static string Next(OpenXmlPartContainer of) =>
        string.Create(CultureInfo.InvariantCulture, $"part{of.Parts.Count() + 1}");

    /// <summary>The ids of those that the file finds by their kind.</summary>
    public static void Fix(WordprocessingDocument file)
    {
        PartIds.Fix(file, p => p is MainDocumentPart or CoreFilePropertiesPart);
        PartIds.Fix(file.MainDocumentPart!, p => p is StyleDefinitionsPart or NumberingDefinitionsPart or DocumentSettingsPart);
    }
}
