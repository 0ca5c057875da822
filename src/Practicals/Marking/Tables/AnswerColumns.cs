using Calx.Practicals.Definition;
using Calx.Practicals.Readings;

namespace Calx.Practicals.Marking.Tables;

/// <summary>Which column is the student's, and which are answers.</summary>
internal sealed class AnswerColumns
{
    // Common practice in mark books, no source.
    private static readonly string[] StudentHeadings = ["student", "students", "name", "names", "pupil", "pupils", "learner", "student name", "candidate"];

    private static readonly string[] GroupHeadings = ["group", "groups", "group number", "table", "bench"];

    // 'sourcedId' is what the OneRoster convention calls it.
    private static readonly string[] SourcedIdHeadings = ["id", "sourcedid", "student id", "student sourcedid"];

    private readonly Dictionary<int, string> answers;
    private readonly int? group;

    private AnswerColumns(TableCell student, int? group, TableCell? sourcedId, Dictionary<int, string> answers, CellPosition? twice) =>
        (Student, StudentHeading, this.group, SourcedId, SourcedIdHeading, this.answers, Twice) =
            (student.Column, student.Text.Trim(), group, sourcedId?.Column, sourcedId?.Text.Trim() ?? string.Empty, answers, twice);

    /// <summary>Column of the students, from 1.</summary>
    public int Student { get; }

    /// <summary>Its heading as written.</summary>
    public string StudentHeading { get; }

    /// <summary>Column of what the school's own system calls the students, or null.</summary>
    public int? SourcedId { get; }

    /// <summary>Its heading as written; empty where there is none.</summary>
    public string SourcedIdHeading { get; }

    /// <summary>The second of two columns for one answer, or null.</summary>
    public CellPosition? Twice { get; }

    /// <summary>The columns of a row of headings, or null where it does not name students and at least one answer.</summary>
    public static AnswerColumns? Find(CellRow row, Practical practical)
    {
        TableCell? student = row.Cells.FirstOrDefault(c => IsOneOf(StudentHeadings, c));
        if (student is null)
        {
            return null;
        }

        Dictionary<string, string> known = practical.AllAnswers.SelectMany(a => new[] { (Folded(a.Id), a.Id), (Folded(a.Label), a.Id) })
            .Concat(practical.Sheet.Questions.SelectMany(q => new[] { (Folded(q.Id), q.Id), (Folded(q.Ask), q.Id) })).DistinctBy(k => k.Item1).ToDictionary(k => k.Item1, k => k.Id, StringComparer.Ordinal);
        var found = new Dictionary<int, string>();
        CellPosition? twice = null;
        TableCell? group = row.Cells.FirstOrDefault(c => c != student && IsOneOf(GroupHeadings, c));
        TableCell? sourcedId = row.Cells.FirstOrDefault(c => c != student && IsOneOf(SourcedIdHeadings, c));
        foreach (TableCell cell in row.Cells.Where(c => c != student && c != group && c != sourcedId))
        {
            string heading = Folded(cell.Text);
            if (!known.TryGetValue(heading, out string? id) && !known.TryGetValue(Folded(HeadingUnit.Split(cell.Text).Text), out id))
            {
                continue;
            }

            twice ??= found.ContainsValue(id) ? new CellPosition(string.Empty, row.Number, cell.Column) : null;
            found[cell.Column] = id;
        }

        // Other words for an answer come after: they never take the place of a heading that says it outright.
        foreach (TableCell cell in row.Cells.Where(c => c != student && c != group && c != sourcedId && !found.ContainsKey(c.Column)))
        {
            if (HeadingsInWords.Meant(cell.Text, practical) is string id && !found.ContainsValue(id))
            {
                found.Add(cell.Column, id);
            }
        }

        return found.Count == 0 ? null : new AnswerColumns(student, group?.Column, sourcedId, found, twice);
    }

    /// <summary>The answers of a row, as written, by the answer's id.</summary>
    public IReadOnlyDictionary<string, string> AnswersOf(CellRow row) =>
        row.Cells.Where(c => answers.ContainsKey(c.Column)).ToDictionary(c => answers[c.Column], c => c.Text.Trim(), StringComparer.Ordinal);

    /// <summary>Answers of a row whose zeros at the end a spreadsheet may not have kept.</summary>
    public IReadOnlySet<string> WithoutZerosOf(CellRow row) => row.Cells.Where(c => answers.ContainsKey(c.Column) && !c.DecimalsShown).Select(c => answers[c.Column]).ToHashSet(StringComparer.Ordinal);

    /// <summary>Whether a column is the student's, the group's, the id's, or an answer.</summary>
    public bool IsKnown(int column) => column == Student || column == group || column == SourcedId || answers.ContainsKey(column);

    /// <summary>The group of a row, or null.</summary>
    public string? GroupOf(CellRow row) => row.Cells.FirstOrDefault(c => c.Column == group)?.Text.Trim() is { Length: > 0 } name ? name : null;

    /// <summary>A row without its answers, its group and the student's id.</summary>
    public CellRow WithoutAnswers(CellRow row, Func<TableCell, TableCell> changed) =>
        new(row.Number, [.. row.Cells.Where(c => !answers.ContainsKey(c.Column) && c.Column != group && c.Column != SourcedId).Select(changed)]);

    private static bool IsOneOf(string[] headings, TableCell cell) => headings.Select(Folded).Contains(Folded(cell.Text));

    /// <summary>Capitals, blanks and the kind of dots make no other heading.</summary>
    internal static string Folded(string text) => string.Concat(HeadingText.Fold(text).Where(c => !char.IsWhiteSpace(c)));
}
