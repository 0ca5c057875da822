using System.Collections.Frozen;
using Calx.Practicals.Texts;

namespace Calx.Practicals.Readings;

/// <summary>Names for rows: as written, from the row above, or a number where there is none.</summary>
internal sealed class GroupNaming(TableIntake intake)
{
    // Names of rows that a spreadsheet adds under a table. 'Max' and 'Min' are left out: pupils have such names.
    private static readonly FrozenSet<string> Summaries = new[]
    {
        "mean", "average", "class mean", "class average", "mean value", "median", "total", "sum", "count", "sd", "std", "st dev",
        "stdev", "std dev", "standard deviation", "range", "avg", "class total", "accepted value", "theoretical", "expected",
    }.ToFrozenSet(StringComparer.OrdinalIgnoreCase);

    private readonly HashSet<string> used = new(StringComparer.OrdinalIgnoreCase);
    private readonly List<int> filledDown = [];
    private readonly List<int> numbered = [];
    private string? above;

    /// <summary>Whether a row under the groups holds a mean or the like, and no group.</summary>
    public static bool IsSummary(string? name) => name is not null && Summaries.Contains(name.TrimEnd(':', '.').Trim());

    /// <summary>The group's name.</summary>
    /// <param name="written">As written, or null.</param>
    /// <param name="mayBeAbove">Whether a blank means the group of the row above: there is a trial or a reading's
    /// name beside it.</param>
    /// <param name="row">Row number, for the note.</param>
    public string Name(string? written, bool mayBeAbove, int row)
    {
        if (written is not null)
        {
            above = written;
        }
        else if (mayBeAbove && above is not null)
        {
            filledDown.Add(row);
        }
        else
        {
            above = Free();
            numbered.Add(row);
        }
        used.Add(above);
        return above;
    }

    /// <summary>Says which names were not written.</summary>
    public void Tell()
    {
        if (filledDown.Count > 0)
            intake.Note(intake.Texts.FilledDown(Rows(filledDown, intake)));
        if (numbered.Count > 0)
            intake.Note(intake.Texts.Numbered(Rows(numbered, intake)));
    }

    /// <summary>'row 4' or 'rows 4, 7, 9 and 12 more'.</summary>
    public static string Rows(IReadOnlyList<int> rows, TableIntake intake)
    {
        const int named = 8;
        string list = intake.Wording.List([.. rows.Take(named).Select(r => r.InFigures())]);
        return rows.Count == 1 ? intake.Texts.OneRow(list)
            : rows.Count > named ? intake.Texts.ManyRows(list, (rows.Count - named).InFigures()) : intake.Texts.SomeRows(list);
    }

    private string Free()
    {
        int number = 1;
        while (used.Contains(Numbered(number)))
            number++;
        return Numbered(number);
    }

    private string Numbered(int number) => intake.Texts.Unnamed(number.InFigures());
}
