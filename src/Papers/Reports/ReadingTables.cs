using System.Globalization;
using System.Text;
using Calx.Papers.Charts;
using Calx.Papers.Texts;
using Calx.Practicals.Definition;
using Calx.Practicals.Findings;
using Calx.Practicals.Inference;
using Calx.Practicals.Readings;

namespace Calx.Papers.Reports;

/// <summary>How the class's table was read: what was taken for what, what could not be taken, what is missing.</summary>
internal static class ReadingTables
{
    private const int MostRejected = 200;

    public static void Write(StringBuilder page, ClassFindings findings, ReportView view, ReportTexts texts)
    {
        page.Append(CultureInfo.InvariantCulture, $"<h2 id=\"columns\">{Text.Own(texts.ColumnsHeading)}</h2>\n");
        if (view.Causes)
        {
            WriteColumns(page, findings.Practical, findings.Readings, texts);
        }

        page.Append(CultureInfo.InvariantCulture, $"<p>{Text.OfSentence(findings.Readings.Balance.SentenceIn(findings.Language))}</p>\n");
        foreach (MissingReadings missing in findings.Identifiability.Undetermined)
        {
            page.Append(CultureInfo.InvariantCulture, $"<p>{Text.Of(missing.Why)}</p>\n");
        }

        // What was typed beside the readings is the teacher's to see first.
        if (!view.Causes)
        {
            return;
        }

        foreach (ReadingNote note in findings.Readings.Notes)
        {
            page.Append(CultureInfo.InvariantCulture, $"<p>{Text.Of(note.ToString())}</p>\n");
        }

        WriteRejected(page, findings.Readings.Rejected, texts);
    }

    private static void WriteColumns(StringBuilder page, Practical practical, ClassReadings readings, ReportTexts texts)
    {
        if (readings.Columns.Count == 0)
        {
            return;
        }

        page.Append("<div class=\"scroll\" tabindex=\"0\" role=\"region\" aria-labelledby=\"columns\"><table>\n");
        ReportTable.WriteColumns(page, texts.ColumnColumn, texts.HeadingColumn, texts.TakenAsColumn);
        foreach (ColumnMatch column in readings.Columns)
        {
            page.Append(CultureInfo.InvariantCulture, $"<tr><th scope=\"row\">{column.ColumnLetter}</th><td>{(column.Heading.Length == 0 ? Text.Own(texts.NoHeading) : Text.Of(column.Heading))}</td><td>{Text.Of(MeaningOf(practical, column.Meaning, texts))}</td></tr>\n");
        }

        page.Append("</tbody>\n</table></div>\n");
    }

    private static string MeaningOf(Practical practical, ColumnMeaning meaning, ReportTexts texts) => meaning switch
    {
        ColumnMeaning.Reading reading => texts.TakenAs(ReadingNames.Of(practical, reading.BaseId, reading.Occurrence), reading.Word),
        ColumnMeaning.ReadyMade ready => texts.TakenAs(ReadingNames.Of(practical, ready.ColumnId, 1), ready.Word),
        ColumnMeaning.Ignored ignored => texts.NotUsed(ignored.Reason),
        _ => meaning.Word,
    };

    private static void WriteRejected(StringBuilder page, IReadOnlyList<RejectedCell> rejected, ReportTexts texts)
    {
        if (rejected.Count == 0)
        {
            return;
        }

        string caption = rejected.Count > MostRejected
            ? texts.FirstRejected(MostRejected.ToString(CultureInfo.InvariantCulture), rejected.Count.ToString(CultureInfo.InvariantCulture)) : texts.RejectedHeading;
        page.Append(CultureInfo.InvariantCulture, $"<div class=\"scroll\" tabindex=\"0\" role=\"region\" aria-labelledby=\"rejected\"><table>\n<caption id=\"rejected\">{Text.Own(caption)}</caption>\n");
        ReportTable.WriteColumns(page, texts.CellColumn, texts.HeadingColumn, texts.TextColumn, texts.WhyColumn);
        foreach (RejectedCell cell in rejected.Take(MostRejected))
        {
            page.Append(CultureInfo.InvariantCulture, $"<tr><th scope=\"row\">{Text.Of(cell.Cell.ToString())}</th><td>{Text.Of(cell.Heading)}</td><td>{Text.Of(cell.Text)}</td><td>{Text.Of(cell.Reason)}</td></tr>\n");
        }

        page.Append("</tbody>\n</table></div>\n");
    }
}
