using System.Globalization;
using System.Text;
using Calx.Papers.Charts;

namespace Calx.Papers.Documents.Html;

/// <summary>A table of a paper in HTML.</summary>
internal static class TableHtml
{
    public static void Write(StringBuilder page, StyleBook styles, PaperTable table)
    {
        double all = table.Columns.Sum(c => c.Share);
        page.Append(table.Look == TableRuling.Framed ? "<table class=\"framed\">\n<colgroup>" : "<table>\n<colgroup>");
        foreach (PaperColumn column in table.Columns)
        {
            page.Append(CultureInfo.InvariantCulture, $"<col class=\"{styles.ClassOf($"width:{SvgPicture.N(100 * column.Share / all)}%")}\">");
        }

        page.Append("</colgroup>\n");
        if (table.HasHeadings)
        {
            page.Append("<thead><tr>");
            foreach (PaperColumn column in table.Columns)
            {
                page.Append(CultureInfo.InvariantCulture, $"<th scope=\"col\"{(column.IsNumber ? " class=\"n\"" : string.Empty)}>{PhraseHtml.Of(column.Heading)}</th>");
            }

            page.Append("</tr></thead>\n");
        }

        page.Append("<tbody>\n");
        foreach (IReadOnlyList<PaperCell> row in table.Rows)
        {
            page.Append("<tr>");
            foreach ((PaperCell cell, PaperColumn column) in row.Zip(table.Columns))
            {
                page.Append(Cell(styles, cell, column));
            }

            page.Append("</tr>\n");
        }

        page.Append("</tbody>\n</table>\n");
    }

    private static string Cell(StyleBook styles, PaperCell cell, PaperColumn column)
    {
        string tag = cell.IsHeading ? "th" : "td";
        string scope = cell.IsHeading ? " scope=\"row\"" : string.Empty;
        string[] classes =
        [
            .. column.IsNumber && !cell.IsHeading ? ["n"] : Array.Empty<string>(),
            .. cell.HeightInMillimetres > 0 ? [styles.ClassOf($"height:{SvgPicture.N(cell.HeightInMillimetres)}mm")] : Array.Empty<string>(),
        ];
        string named = classes.Length == 0 ? string.Empty : $" class=\"{string.Join(' ', classes)}\"";
        return $"<{tag}{scope}{named}>{PhraseHtml.Of(cell.Text)}</{tag}>";
    }
}
