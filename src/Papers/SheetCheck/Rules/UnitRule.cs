using System.Text.RegularExpressions;
using Calx.Papers.Handouts;

namespace Calx.Papers.SheetCheck.Rules;

/// <summary>A table's unit stands once, in its heading, as quantity / unit or quantity (unit); cells hold bare numbers.</summary>
internal static partial class UnitRule
{
    public static IEnumerable<SheetFinding> Of(CheckedSheet it) => it.Tables.SelectMany(table => Of(table, it));

    private static IEnumerable<SheetFinding> Of(HeadedTable table, CheckedSheet it)
    {
        (TableHeading Heading, SheetCell? Filled)[] headings = [.. table.Headings.Select(h => (h, table.CellsOf(h).FirstOrDefault(c => Filled().IsMatch(c.Text))))];
        (TableHeading Heading, SheetCell? Filled)[] inCells = [.. headings.Where(h => h.Filled is not null)];
        if (inCells.Length > 0)
        {
            (TableHeading heading, SheetCell? filled) = inCells[0];
            string named = Quoted.Whole(heading.Cell.Text);
            yield return new SheetFinding(
                "unit-in-cell", filled!.Place.At(0, it.Language), Quoted.Whole(filled.Text),
                inCells.Length == 1 ? it.Texts.UnitInCells(named) : it.Texts.UnitInCellsOfMore(named, Sentences.Count(inCells.Length - 1)),
                it.Texts.UnitInCellsExpected);
        }

        TableHeading[] bare = [.. headings.Where(h => h.Filled is null && table.UnitOf(h.Heading) is null).Select(h => h.Heading)];
        // One heading above all of them that lacks the unit is meant in their place.
        TableHeading[] meant = bare.Length > 0 && table.RunsDown && table.Top.FirstOrDefault(t => t.IsQuantity) is TableHeading top ? [top] : bare;
        foreach (TableHeading heading in meant)
        {
            string text = Quoted.Whole(heading.Cell.Text);
            yield return new SheetFinding("unit", heading.Cell.Place.At(0, it.Language), text, it.Texts.UnitMissing, it.Texts.UnitExpected(text, heading.Named.Column?.Unit ?? "g"));
        }
    }

    // A number or a blank to write on, and a unit.
    [GeneratedRegex(@"^\s*([-+−]?\d[\d.,·]*|[_.…\s]*[_.…][_.…\s]*)\s*(g|mg|kg|grams?|cm3|cm³|°C|s|min|mol)\s*\.?\s*$", RegexOptions.CultureInvariant)]
    private static partial Regex Filled();
}
