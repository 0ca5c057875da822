using Calx.Measurement.Numbers;
using Calx.Practicals.Definition;
using Calx.Practicals.Inference;
using Calx.Practicals.Readings;

namespace Calx.Practicals.Marking.Tables;

/// <summary>
/// Reads a table of a row a student with readings and answers. A column is an answer where its heading is the answer's id or label, with
/// or without a unit behind; all others are read as a class's table of weighings is. What cannot be taken is named and the rest kept.
/// </summary>
public static class MarkingTableReader
{
    /// <summary>Longest name of a student; a longer text stands in the wrong column.</summary>
    public const int LongestName = 100;

    /// <summary>Most students: all of a large school.</summary>
    public const int MostStudents = 5000;

    /// <summary>Titles and notes above the headings take a dozen rows, not fifty.</summary>
    private const int RowsLookedAt = 50;

    /// <summary>Reads them.</summary>
    /// <param name="sheets">The sheets of a file; the first with a row of headings that names students and answers is read.</param>
    /// <param name="practical">The practical.</param>
    public static MarkingTable Read(IReadOnlyList<CellTable> sheets, Practical practical)
    {
        ArgumentNullException.ThrowIfNull(sheets);
        ArgumentNullException.ThrowIfNull(practical);
        foreach (CellTable sheet in sheets)
        {
            for (int i = 0; i < Math.Min(sheet.Rows.Count, RowsLookedAt); i++)
            {
                if (AnswerColumns.Find(sheet.Rows[i], practical) is AnswerColumns columns)
                {
                    return columns.Twice is CellPosition twice
                        ? new MarkingTable.Unreadable("two columns have this heading, so which of them is meant cannot be told", new CellPosition(sheet.Sheet, twice.Row, twice.Column))
                        : Read(sheet, i, columns, practical);
                }
            }
        }

        string wanted = string.Join(", ", practical.Answers.Take(2).Select(a => $"'{a.Id}'"));
        return new MarkingTable.Unreadable(
            $"no row of headings found that names students and answers, such as 'student', {string.Join(", ", practical.Readings.Select(r => $"'{r.Id}'"))}, {wanted}", null);
    }

    private static MarkingTable Read(CellTable sheet, int headings, AnswerColumns columns, Practical practical)
    {
        CellRow[] below = [.. sheet.Rows.Skip(headings + 1).Where(r => r.Cells.Any(c => c.Text.Trim().Length > 0))];
        if (below.Length > MostStudents)
        {
            return new MarkingTable.Unreadable($"there are {below.Length} rows below the headings; at most {MostStudents} are marked at once", null);
        }

        List<RejectedCell> rejected = [];
        Dictionary<int, string> students = Students(sheet, below, columns, rejected);
        (IReadOnlyDictionary<int, GroupReadings> readings, IReadOnlyList<string> notes, string? none) = Readings(sheet, headings, columns, practical, students.Keys, rejected);
        IReadOnlyDictionary<int, string> ids = StudentIds.Of(sheet, [.. below.Where(r => students.ContainsKey(r.Number))], columns, rejected);
        Dictionary<int, IReadOnlyDictionary<string, CurveReadOff>> curves = readings.Values.Where(g => g.Series is { Points.Count: > 0 }).ToDictionary(
            g => g.Row!.Value, g => CurveReadOff.Of(practical, g.Series, (double)g.Readings.Select(r => r.LastDigit).DefaultIfEmpty(0.01m).Min()));
        StudentWork[] works =
        [
            .. below.Where(r => students.ContainsKey(r.Number)).Select(r => new StudentWork(
                students[r.Number], ReadingsOf(readings.GetValueOrDefault(r.Number)), columns.AnswersOf(r), r.Number, columns.GroupOf(r), ids.GetValueOrDefault(r.Number), columns.WithoutZerosOf(r))
                {
                    ReadOff = curves.GetValueOrDefault(r.Number) ?? new Dictionary<string, CurveReadOff>(),
                }),
        ];
        return works.Length == 0
            ? new MarkingTable.Unreadable("there is no row with a student below the headings", new CellPosition(sheet.Sheet, sheet.Rows[headings].Number, columns.Student))
            : new MarkingTable.Taken(works, [.. rejected.OrderBy(r => (r.Cell.Row, r.Cell.Column))], notes) { NoReadings = none };
    }

    private static Dictionary<int, string> Students(CellTable sheet, CellRow[] below, AnswerColumns columns, List<RejectedCell> rejected)
    {
        var students = new Dictionary<int, string>();
        var rows = new Dictionary<string, int>(StringComparer.OrdinalIgnoreCase);
        foreach (CellRow row in below)
        {
            string name = Text(row, columns.Student);
            string? reason = name.Length == 0 ? "there is no student in this row, so it cannot be marked"
                : name.Length > LongestName ? $"longer than {LongestName} characters, so not the name of a student"
                : rows.TryGetValue(name, out int before) ? FormattableString.Invariant($"this student stands in row {before} already; that row is marked, this one is not")
                : null;
            if (reason is not null)
            {
                rejected.Add(new RejectedCell(new CellPosition(sheet.Sheet, row.Number, columns.Student), columns.StudentHeading, name, reason));
                continue;
            }

            rows.Add(name, row.Number);
            students.Add(row.Number, name);
        }

        return students;
    }

    /// <summary>All but the answers, read as weighings; a student is called by the row, so that no two are taken for one.</summary>
    private static (IReadOnlyDictionary<int, GroupReadings> Readings, IReadOnlyList<string> Notes, string? None) Readings(
        CellTable sheet, int headings, AnswerColumns columns, Practical practical, IReadOnlyCollection<int> rows, List<RejectedCell> rejected)
    {
        CellRow[] kept =
        [
            columns.WithoutAnswers(sheet.Rows[headings], c => c),
            .. sheet.Rows.Skip(headings + 1).Where(r => rows.Contains(r.Number)).Select(r => columns.WithoutAnswers(
                r, c => c.Column == columns.Student ? new TableCell(c.Column, FormattableString.Invariant($"row {r.Number}")) : c)),
        ];
        switch (ClassTableReader.Read([new CellTable(sheet.Sheet, kept)], practical))
        {
            case ClassReading.Taken { Readings: ClassReadings read }:
                rejected.AddRange(read.Rejected);
                return (read.Groups.Where(g => g.Row is not null).ToDictionary(g => g.Row!.Value), [.. read.Notes.Select(n => n.Text), .. Unread(sheet.Rows[headings], columns, read.Columns)], null);
            case ClassReading.Unreadable unreadable:
                return (new Dictionary<int, GroupReadings>(), [.. Unread(sheet.Rows[headings], columns, [])], $"no readings were found in the file: {unreadable.Reason}");
            default:
                throw new System.Diagnostics.UnreachableException();
        }
    }

    /// <summary>Headings that mean nothing here: a slip in one of them would cost students their marks without a word.</summary>
    private static IEnumerable<string> Unread(CellRow headings, AnswerColumns columns, IReadOnlyList<ColumnMatch> matched) =>
        from cell in headings.Cells
        where cell.Text.Trim().Length > 0 && !columns.IsKnown(cell.Column) && !matched.Any(m => m.Column == cell.Column && m.Meaning.Word != "ignored")
        select $"the column '{cell.Text.Trim()}' ({CellPosition.LetterOf(cell.Column)}) was not read: it is no reading, answer or question of this practical";

    private static Dictionary<string, IReadOnlyList<WrittenNumber>> ReadingsOf(GroupReadings? group) => group is null
        ? new Dictionary<string, IReadOnlyList<WrittenNumber>>()
        : group.Readings.GroupBy(r => r.BaseId).ToDictionary(
            g => g.Key, g => (IReadOnlyList<WrittenNumber>)[.. g.OrderBy(r => r.Occurrence).Select(r => r.Value)], StringComparer.Ordinal);

    private static string Text(CellRow row, int column) => row.Cells.FirstOrDefault(c => c.Column == column)?.Text.Trim() ?? string.Empty;
}
