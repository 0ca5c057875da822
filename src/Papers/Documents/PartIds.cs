using DocumentFormat.OpenXml.Packaging;

namespace Calx.Papers.Documents;

/// <summary>Gives the parts of a file ids after their names where the library draws them by chance and nothing refers to them: the same
/// content gives the same bytes.</summary>
internal static class PartIds
{
    /// <summary>Fixes the ids of some parts.</summary>
    /// <param name="of">The file or the part that holds them.</param>
    /// <param name="isFoundByKind">Whether a part is found by its kind, so that no id in a text leads to it.</param>
    public static void Fix(OpenXmlPartContainer of, Func<OpenXmlPart, bool> isFoundByKind)
    {
        foreach (IdPartPair pair in of.Parts.Where(p => isFoundByKind(p.OpenXmlPart)).OrderBy(p => p.OpenXmlPart.Uri.ToString(), StringComparer.Ordinal).ToArray())
        {
            of.ChangeIdOfPart(pair.OpenXmlPart, Path.GetFileNameWithoutExtension(pair.OpenXmlPart.Uri.ToString()));
        }
    }
}
