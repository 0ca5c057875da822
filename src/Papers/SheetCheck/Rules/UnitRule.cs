using System.Globalization;
using System.Text.RegularExpressions;

namespace Calx.Papers.SheetCheck.Rules;

/// <summary>A table's unit stands once, in its heading, as quantity / unit or quantity (unit); cells hold bare numbers.</summary>
internal static partial class UnitRule
{
    public static IEnumerable<SheetFinding> Of(CheckedSheet it) => it.Tables.SelectMany(Of);

    private static IEnumerable<SheetFinding> Of(HeadedTable table)
    {
        (TableHeading Heading, SheetCell? Filled)[] headings = [.. table.Headings.Select(h => (h, table.CellsOf(h).FirstOrDefault(c => Filled().IsMatch(c.Text))))];
        (TableHeading Heading, SheetCell? Filled)[] inCells = [.. headings.Where(h => h.Filled is not null)];
        if (inCells.Length > 0)
        {
            string also = inCells.Length == 1 ? "" : string.Create(CultureInfo.InvariantCulture, $", and of {inCells.Length - 1} more");
            yield return new SheetFinding(
                "unit-in-cell", inCells[0].Filled!.Place.At(0), Quoted.Whole(inCells[0].Filled!.Text), $"the unit stands in the cells of '{Quoted.Whole(inCells[0].Heading.Cell.Text)}'{also}",
                "the unit once, in the heading (quantity / unit), and bare numbers in the cells");
        }

        TableHeading[] bare = [.. headings.Where(h => h.Filled is null && table.UnitOf(h.Heading) is null).Select(h => h.Heading)];
        // One heading above all of them that lacks the unit is meant in their place.
        TableHeading[] meant = bare.Length > 0 && table.RunsDown && table.Top.FirstOrDefault(t => t.IsQuantity) is TableHeading top ? [top] : bare;
        foreach (TableHeading heading in meant)
        {
            string text = Quoted.Whole(heading.Cell.Text);
            yield return new SheetFinding("unit", heading.Cell.Place.At(0), text, "the heading of the table has no unit", $"quantity / unit: '{text} / {heading.Named.Column?.Unit ?? "g"}'");
        }
    }

    // A number or a blank to write on, and a unit.
    [GeneratedRegex(@"^\s*([-+−]?\d[\d.,·]*|[_.…\s]*[_.…][_.…\s]*)\s*(g|mg|kg|grams?|cm3|cm³|°C|s|min|mol)\s*\.?\s*$", RegexOptions.CultureInvariant)]
    private static partial Regex Filled();
}
