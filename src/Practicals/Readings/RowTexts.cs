namespace Calx.Practicals.Readings;

/// <summary>The words of a row: what is said of the group.</summary>
internal static class RowTexts
{
    /// <summary>The text of the row's column for a kind, without spaces round it, or null where it is blank.</summary>
    public static string? Said(CellRow row, IReadOnlyDictionary<int, ColumnMeaning> meanings, SaidOfGroup kind)
    {
        foreach (TableCell cell in row.Cells)
        {
            if (meanings.TryGetValue(cell.Column, out ColumnMeaning? meaning)
                && meaning is ColumnMeaning.Said said && said.Kind == kind && Trimmed(cell) is string text)
            {
                return text;
            }
        }
        return null;
    }

    /// <summary>The cells that say something of the group.</summary>
    public static TableCell[] AllSaid(CellRow row, IReadOnlyDictionary<int, ColumnMeaning> meanings) => [.. row.Cells.Where(
        cell => meanings.GetValueOrDefault(cell.Column) is ColumnMeaning.Said && Trimmed(cell) is not null)];

    /// <summary>Adds arm, time, balance and observations of the row to the group.</summary>
    public static void Remarks(CellRow row, IReadOnlyDictionary<int, ColumnMeaning> meanings, RawGroup group)
    {
        foreach (TableCell cell in row.Cells)
        {
            if (meanings.GetValueOrDefault(cell.Column) is not ColumnMeaning.Said { Kind: var kind } || Trimmed(cell) is not string text)
                continue;
            if (kind == SaidOfGroup.Observations)
                Array.ForEach(Phrases(text), phrase => group.Say(kind, phrase));
            else if (kind is not (SaidOfGroup.Group or SaidOfGroup.Trial))
                group.Say(kind, text);
        }
    }

    /// <summary>Whether the row is the heading row over again, as at the top of a printed page.</summary>
    public static bool RepeatsHeadings(CellRow row, TableIntake intake, IReadOnlyDictionary<int, ColumnMeaning> meanings)
    {
        int same = 0;
        foreach (TableCell cell in row.Cells)
        {
            if (!meanings.TryGetValue(cell.Column, out ColumnMeaning? meaning) || meaning is ColumnMeaning.Ignored)
                continue;
            if (Trimmed(cell) is not string text)
                continue;
            if (!text.Equals(intake.Heading(cell.Column), StringComparison.OrdinalIgnoreCase))
                return false;
            same++;
        }
        return same >= 2;
    }

    /// <summary>The text without blanks round it, or null where nothing is left.</summary>
    public static string? Trimmed(TableCell cell)
    {
        ReadOnlySpan<char> trimmed = NumberText.Trim(cell.Text);
        return trimmed.IsEmpty ? null : trimmed.Length == cell.Text.Length ? cell.Text : trimmed.ToString();
    }

    /// <summary>A text short enough for a message.</summary>
    public static string Short(string text) => text.Length <= 40 ? text.Trim() : text[..40].Trim() + "...";

    private static string[] Phrases(string text) => text
        .Split([',', ';', '\n', '\r', '/', '|'], StringSplitOptions.TrimEntries | StringSplitOptions.RemoveEmptyEntries);
}
