using System.Globalization;
using System.Text;
using Calx.Practicals.Findings;
using Calx.Practicals.Inference;
using Calx.Practicals.Readings;

namespace Calx.Papers.Reports;

/// <summary>How the class's table was read: what was taken for what, what could not be taken, what is missing.</summary>
internal static class ReadingTables
{
    private const int MostRejected = 200;

    public static void Write(StringBuilder page, ClassFindings findings)
    {
        page.Append("<h2>How the table was read</h2>\n");
        WriteColumns(page, findings.Readings);
        page.Append(CultureInfo.InvariantCulture, $"<p>{Text.OfSentence(findings.Readings.Balance.Sentence)}</p>\n");
        foreach (MissingReadings missing in findings.Identifiability.Undetermined)
        {
            page.Append(CultureInfo.InvariantCulture, $"<p>{Text.Of(missing.Why)}</p>\n");
        }

        foreach (ReadingNote note in findings.Readings.Notes)
        {
            page.Append(CultureInfo.InvariantCulture, $"<p>{Text.Of(note.ToString())}</p>\n");
        }

        WriteRejected(page, findings.Readings.Rejected);
    }

    private static void WriteColumns(StringBuilder page, ClassReadings readings)
    {
        if (readings.Columns.Count == 0)
        {
            return;
        }

        page.Append("<div class=\"scroll\"><table>\n<thead><tr><th scope=\"col\">column</th><th scope=\"col\">heading</th><th scope=\"col\">taken as</th></tr></thead>\n<tbody>\n");
        foreach (ColumnMatch column in readings.Columns)
        {
            string meaning = column.Meaning is ColumnMeaning.Ignored ignored ? $"not used: {ignored.Reason}" : column.Meaning.Word;
            page.Append(CultureInfo.InvariantCulture, $"<tr><th scope=\"row\">{column.ColumnLetter}</th><td>{Text.Of(column.Heading)}</td><td>{Text.Of(meaning)}</td></tr>\n");
        }

        page.Append("</tbody>\n</table></div>\n");
    }

    private static void WriteRejected(StringBuilder page, IReadOnlyList<RejectedCell> rejected)
    {
        if (rejected.Count == 0)
        {
            return;
        }

        page.Append(CultureInfo.InvariantCulture, $"<div class=\"scroll\"><table>\n<caption>Cells not used{(rejected.Count > MostRejected ? $": the first {MostRejected} of {rejected.Count}" : string.Empty)}</caption>\n")
            .Append("<thead><tr><th scope=\"col\">cell</th><th scope=\"col\">text</th><th scope=\"col\">why</th></tr></thead>\n<tbody>\n");
        foreach (RejectedCell cell in rejected.Take(MostRejected))
        {
            page.Append(CultureInfo.InvariantCulture, $"<tr><th scope=\"row\">{Text.Of(cell.Cell.ToString())}</th><td>{Text.Of(cell.Text)}</td><td>{Text.Of(cell.Reason)}</td></tr>\n");
        }

        page.Append("</tbody>\n</table></div>\n");
    }
}
