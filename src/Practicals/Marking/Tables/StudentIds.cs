using Calx.Practicals.Readings;

namespace Calx.Practicals.Marking.Tables;

/// <summary>What the school's own system calls the students, where the table says so: kept as written, so that the system knows them again.</summary>
internal static class StudentIds
{
    /// <summary>Longer texts are no ids: the OneRoster convention allows 255 characters.</summary>
    private const int Longest = 255;

    /// <summary>The ids by the number of the row. One that cannot be used is named; its student is marked all the same.</summary>
    public static Dictionary<int, string> Of(CellTable sheet, CellRow[] rows, AnswerColumns columns, List<RejectedCell> rejected)
    {
        var ids = new Dictionary<int, string>();
        var taken = new Dictionary<string, int>(StringComparer.Ordinal);
        foreach (CellRow row in columns.SourcedId is null ? [] : rows)
        {
            string id = row.Cells.FirstOrDefault(c => c.Column == columns.SourcedId)?.Text.Trim() ?? string.Empty;
            if (id.Length == 0)
            {
                continue;
            }

            string? reason = id.Length > Longest ? $"longer than {Longest} characters, so no id of a student; the student is marked without it"
                : id.Any(char.IsControl) ? "an id has no line breaks; the student is marked without it"
                : taken.TryGetValue(id, out int before) ? FormattableString.Invariant($"this id stands in row {before} already; the student is marked without it")
                : null;
            if (reason is not null)
            {
                rejected.Add(new RejectedCell(new CellPosition(sheet.Sheet, row.Number, columns.SourcedId!.Value), columns.SourcedIdHeading, id, reason));
                continue;
            }

            taken.Add(id, row.Number);
            ids.Add(row.Number, id);
        }

        return ids;
    }
}
