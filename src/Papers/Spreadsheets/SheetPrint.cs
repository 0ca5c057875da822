using Calx.Papers.Documents;
using Calx.Papers.Texts;

namespace Calx.Papers.Spreadsheets;

/// <summary>How a sheet is printed.</summary>
/// <param name="Size">The paper.</param>
/// <param name="Heads">What stands at the head and foot of each page.</param>
/// <param name="Language">The language of the workbook's own texts.</param>
internal sealed record SheetPrint(SheetSize Size, RunningHeads Heads, PaperLanguage Language)
{
    /// <summary>A spreadsheet takes 255 characters at the head and as many at the foot, signs for places included.</summary>
    private const int LongestPart = 110;

    /// <summary>The head in a spreadsheet's notation (ECMA-376 part 1, 18.3.1.46).</summary>
    public string Head => $"&L{Plain(Heads.Left)}&R{Plain(Heads.Right)}";

    /// <summary>The foot, with the page's number.</summary>
    public string Foot => $"&L{Plain(Heads.Foot)}&R&P {Plain(new SharedTexts(Language).OfPages)} &N";

    /// <summary>A text in which no sign is taken for a command, cut where it is too long.</summary>
    private static string Plain(string text)
    {
        string allowed = Documents.Word.WordText.Allowed(text).Replace('\n', ' ');
        for (int length = allowed.Length; ; length--)
        {
            string plain = (length < allowed.Length ? allowed[..length] + "…" : allowed).Replace("&", "&&", StringComparison.Ordinal);
            if (plain.Length <= LongestPart)
            {
                return plain;
            }
        }
    }
}
