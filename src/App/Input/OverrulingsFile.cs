using System.Globalization;
using Calx.App.Output;
using Calx.Papers.Tables;
using Calx.Practicals.Marking;
using Calx.Practicals.Readings;

namespace Calx.App.Input;

/// <summary>Reads the teacher's own marks: a table (CSV, XLSX) with the headings student, answer, marks, reason, a row a decision.</summary>
internal static class OverrulingsFile
{
    /// <summary>Most decisions: some for each student of a large school.</summary>
    public const int Most = 20_000;

    private const int LongestReason = 4000;
    private const string Expected = "a table with the headings student, answer, marks, reason";
    private static readonly string[] Headings = ["student", "answer", "marks", "reason"];

    /// <summary>The decisions, or null after telling each fault on standard error.</summary>
    public static IReadOnlyList<Overruling>? Read(string path, Surroundings surroundings)
    {
        TableFile table = TableFile.Read(surroundings.FullPath(path));
        if (table is TableFile.Fault fault)
        {
            surroundings.Error.WriteLine(Fault.Line(path, 1, 1, $"{fault.Reason}; expected {Expected}"));
            return null;
        }

        IReadOnlyList<CellTable> sheets = ((TableFile.Opened)table).Sheets;
        CellRow? first = sheets.Count == 0 ? null : sheets[0].Rows is [var top, ..] ? top : null;
        int[] columns = [.. Headings.Select(h => first?.Cells.FirstOrDefault(c => c.Text.Trim().Equals(h, StringComparison.OrdinalIgnoreCase))?.Column ?? 0)];
        if (first is null || columns.AsSpan(0, 3).Contains(0))
        {
            surroundings.Error.WriteLine(Fault.Line(path, first?.Number ?? 1, 1, $"the first row does not have the headings; expected {Expected}"));
            return null;
        }

        CellRow[] rows = [.. sheets[0].Rows.Skip(1).Where(r => r.Cells.Any(c => c.Text.Trim().Length > 0))];
        if (rows.Length > Most)
        {
            surroundings.Error.WriteLine(Fault.Line(path, rows[Most].Number, 1, string.Create(CultureInfo.InvariantCulture, $"there are {rows.Length} rows; at most {Most} are taken")));
            return null;
        }

        var overrulings = new List<Overruling>();
        bool isFaulty = false;
        foreach (CellRow row in rows)
        {
            string Text(int column) => row.Cells.FirstOrDefault(c => c.Column == column)?.Text.Trim() ?? string.Empty;
            (int Column, string Reason)? wrong = Text(columns[0]).Length == 0 ? (columns[0], "there is no student in this row")
                : Text(columns[1]).Length == 0 ? (columns[1], "there is no answer in this row; its id was expected, such as ratio")
                : !int.TryParse(Text(columns[2]), NumberStyles.None, CultureInfo.InvariantCulture, out int marks) ? (columns[2], $"'{Text(columns[2])}' are no marks; a whole number from 0 was expected")
                : columns[3] > 0 && Text(columns[3]).Length > LongestReason ? (columns[3], $"the reason is longer than {LongestReason} characters")
                : null;
            if (wrong is (int column, string reason))
            {
                surroundings.Error.WriteLine(Fault.Line(path, row.Number, column, reason));
                isFaulty = true;
                continue;
            }

            overrulings.Add(new Overruling(Text(columns[0]), Text(columns[1]), int.Parse(Text(columns[2]), CultureInfo.InvariantCulture), columns[3] > 0 ? Text(columns[3]) : string.Empty));
        }

        return isFaulty ? null : overrulings;
    }
}
