using System.Globalization;
using System.Text;

namespace Calx.Papers.Reports;

/// <summary>A table of a report under a heading of its own; a line feed in a cell begins a new line.</summary>
/// <param name="id">Unique on the page.</param>
/// <param name="heading">What it tells.</param>
/// <param name="columns">Names of the columns; those with numbers stand to the right.</param>
internal sealed class ReportTable(string id, string heading, params (string Name, bool IsNumber)[] columns)
{
    private readonly List<string[]> rows = [];

    /// <summary>How to read it, over its rows; may be empty.</summary>
    public string Caption { get; private set; } = string.Empty;

    /// <summary>Says how to read it.</summary>
    public ReportTable Under(string caption)
    {
        Caption = caption;
        return this;
    }

    /// <summary>Adds a row: its name, then a cell a column, none of it markup.</summary>
    /// <exception cref="ArgumentException">There are not as many cells as columns.</exception>
    public void Add(params string[] cells) => AddMarkup([.. cells.Select(Lines)]);

    /// <summary>Adds a row whose name is a list, each entry with a note in small letters under it.</summary>
    /// <exception cref="ArgumentException">There are not as many cells as columns.</exception>
    public void AddNoted(IEnumerable<(string Name, string Note)> list, params string[] cells)
    {
        IEnumerable<string> entries = list.Select(entry => $"<li>{Lines(entry.Name)}<br/><small>{Lines(entry.Note)}</small></li>");
        AddMarkup([$"<ul>{string.Concat(entries)}</ul>", .. cells.Select(Lines)]);
    }

    /// <summary>Writes heading and table.</summary>
    public void Write(StringBuilder page)
    {
        page.Append(CultureInfo.InvariantCulture, $"<h2 id=\"{id}\">{Text.Of(heading)}</h2>\n")
            .Append(CultureInfo.InvariantCulture, $"<div class=\"scroll\" tabindex=\"0\" role=\"region\" aria-labelledby=\"{id}\"><table class=\"{id}\">\n");
        if (Caption.Length > 0)
        {
            page.Append(CultureInfo.InvariantCulture, $"<caption><span>{Text.OfSentence(Caption)}</span></caption>\n");
        }

        page.Append("<thead><tr>");
        foreach ((string name, bool isNumber) in columns)
        {
            page.Append(CultureInfo.InvariantCulture, $"<th scope=\"col\"{Aligned(isNumber)}>{Text.OfSentence(name)}</th>");
        }

        page.Append("</tr></thead>\n<tbody>\n");
        foreach (string[] cells in rows)
        {
            WriteRow(page, cells);
        }

        page.Append("</tbody>\n</table></div>\n");
    }

    /// <summary>Writes a row of headings, none of them over numbers, and begins the rows.</summary>
    public static void WriteColumns(StringBuilder page, params IEnumerable<string> names) => page.Append("<thead><tr>")
        .AppendJoin(string.Empty, names.Select(n => $"<th scope=\"col\">{Text.Own(n)}</th>")).Append("</tr></thead>\n<tbody>\n");

    private void AddMarkup(string[] cells) => rows.Add(cells.Length == columns.Length
        ? cells
        : throw new ArgumentException($"{columns.Length} cells are expected.", nameof(cells)));

    private void WriteRow(StringBuilder page, string[] cells)
    {
        page.Append(CultureInfo.InvariantCulture, $"<tr><th scope=\"row\">{cells[0]}</th>");
        for (int i = 1; i < cells.Length; i++)
        {
            page.Append(CultureInfo.InvariantCulture, $"<td{Aligned(columns[i].IsNumber)}>{cells[i]}</td>");
        }

        page.Append("</tr>\n");
    }

    private static string Aligned(bool isNumber) => isNumber ? " class=\"n\"" : string.Empty;

    private static string Lines(string cell) => string.Join("<br/>", cell.Split('\n').Select(Text.OfSentence));
}
