using Calx.App.Output;
using Calx.Papers.Tables;
using Calx.Practicals.CatchUp;
using Calx.Practicals.Readings;

namespace Calx.App.Input;

/// <summary>Reads a list of students: one name a line, or a table (CSV, XLSX) with a heading above the names.</summary>
internal static class StudentsFile
{
    /// <summary>Most names: a year group of a large school has fewer.</summary>
    public const int MostStudents = 400;

    /// <summary>Longest name in characters, two first names and two surnames among them.</summary>
    public const int LongestName = 80;

    private const string Expected = "one name a line, or a table with the heading 'name' above the names";

    private static readonly string[] Headings = ["name", "student", "pupil", "student name", "pupil name"];

    /// <summary>The students, or null after telling each fault on standard error.</summary>
    public static IReadOnlyList<CatchUpStudent>? Read(string path, Surroundings surroundings)
    {
        switch (TableFile.Read(surroundings.FullPath(path)))
        {
            case TableFile.Fault fault:
                surroundings.Error.WriteLine(Fault.Line(path, 1, 1, $"{fault.Reason}; expected {Expected}"));
                return null;
            case TableFile.Opened { Sheets: [CellTable sheet, ..] } when sheet.Rows.Count > 0:
                var list = new List(path, surroundings);
                list.Take(sheet.Rows);
                return list.Students;
            default:
                surroundings.Error.WriteLine(Fault.Line(path, 1, 1, $"there is no name in it; expected {Expected}"));
                return null;
        }
    }

    private sealed class List(string path, Surroundings surroundings)
    {
        private readonly List<CatchUpStudent> students = [];
        private readonly Dictionary<string, int> rowOf = new(StringComparer.Ordinal);
        private bool isFaulty;

        public IReadOnlyList<CatchUpStudent>? Students => isFaulty ? null : students;

        public void Take(IReadOnlyList<CellRow> rows)
        {
            TableCell[] headings = [.. rows[0].Cells.Where(c => Headings.Contains(CatchUpStudent.Normal(c.Text)))];
            if (headings.Length > 1)
            {
                Tell(rows[0].Number, headings[1].Column, $"two columns could hold the names; expected one of the headings '{string.Join("', '", Headings)}', once");
                return;
            }

            CellRow[] names = headings.Length == 1 ? [.. rows.Skip(1)] : [.. rows];
            int next = rows[0].Number + headings.Length;
            foreach (CellRow row in names)
            {
                Empty(next, row.Number - 1);
                next = row.Number + 1;
                if (headings.Length == 1)
                {
                    TakeOfColumn(row, headings[0].Column);
                }
                else if (row.Cells.Count > 2)
                {
                    Tell(row.Number, row.Cells[2].Column, $"there are {row.Cells.Count} cells in this row; expected {Expected}");
                }
                else
                {
                    // 'Smith, Anna' is one name, though a comma separates cells elsewhere.
                    Take(row.Number, row.Cells[0].Column, string.Join(", ", row.Cells.Select(c => c.Text.Trim())));
                }
            }

            if (students.Count == 0 && !isFaulty)
            {
                Tell(rows[0].Number, 1, $"there is no name in it; expected {Expected}");
            }
        }

        private void TakeOfColumn(CellRow row, int column)
        {
            if (row.Cells.FirstOrDefault(c => c.Column == column) is TableCell cell)
            {
                Take(row.Number, column, cell.Text.Trim());
            }
            else
            {
                Tell(row.Number, column, "there is no name in this row; expected one, or the row left out");
            }
        }

        private void Take(int row, int column, string name)
        {
            if (name.Length > LongestName)
            {
                Tell(row, column, $"this name has {name.Length} characters; expected {LongestName} at most");
            }
            else if (name.FirstOrDefault(char.IsControl) != default)
            {
                Tell(row, column, "there is a character in this name that is no letter; expected a name on one line");
            }
            else if (rowOf.TryGetValue(CatchUpStudent.Normal(name), out int before))
            {
                Tell(row, column, $"'{name}' stands on line {before} already; expected each student once, two of one name told apart, as by a letter of the surname");
            }
            else if (students.Count == MostStudents)
            {
                Tell(row, column, $"there are more than {MostStudents} names; expected a class, or a year group at most");
                students.Clear();
            }
            else
            {
                rowOf.Add(CatchUpStudent.Normal(name), row);
                students.Add(CatchUpStudent.Named(name));
            }
        }

        /// <summary>An empty line harms nothing: it is named, in case a name was there once.</summary>
        private void Empty(int from, int to)
        {
            for (int row = from; row <= to; row++)
            {
                surroundings.Error.WriteLine(Fault.Line(path, row, 1, "this line is empty and passed over; expected a name"));
            }
        }

        private void Tell(int row, int column, string reason)
        {
            isFaulty = true;
            surroundings.Error.WriteLine(Fault.Line(path, row, column, reason));
        }
    }
}
