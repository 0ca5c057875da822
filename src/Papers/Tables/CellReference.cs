using System.Globalization;

namespace Calx.Papers.Tables;

/// <summary>Reads cell references of a workbook: <c>C7</c> is column 3, row 7.</summary>
internal static class CellReference
{
    /// <summary>The column number of a reference, from 1, or null where it has none.</summary>
    public static int? Column(string? reference)
    {
        int column = 0;
        foreach (char c in reference ?? "")
        {
            if (c is < 'A' or > 'Z' || column > 1_000_000)
                break;
            column = column * 26 + (c - 'A' + 1);
        }
        return column == 0 ? null : column;
    }

    /// <summary>The row number of a reference, from 1, or null where it has none.</summary>
    public static int? Row(string? reference) =>
        int.TryParse((reference ?? "").AsSpan().TrimStart("ABCDEFGHIJKLMNOPQRSTUVWXYZ$"), NumberStyles.None, CultureInfo.InvariantCulture, out int row)
            ? row
            : null;
}
