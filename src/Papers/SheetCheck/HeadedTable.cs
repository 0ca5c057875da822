using System.Text.RegularExpressions;
using Calx.Practicals.Readings;

namespace Calx.Papers.SheetCheck;

/// <summary>A table whose headings name quantities: at the top, or down the side with what they head to the right.</summary>
internal sealed partial class HeadedTable
{
    private const int LongestHeading = 90;

    private readonly HeadingNames names;

    private HeadedTable(SheetTable table, bool runsDown, HeadingNames names)
    {
        Table = table;
        RunsDown = runsDown;
        this.names = names;
        SheetCell[] top = [.. table.Rows[0]];
        Top = [.. top.Where(c => !runsDown || c.Column > 1).Select(Heading)];
        IEnumerable<SheetCell> cells = runsDown ? table.Column(1).Where(c => !c.IsContinued) : top.Concat(SecondRow(table, top));
        TableHeading[] all = [.. cells.Select(Heading).Where(h => h.IsQuantity)];
        // 'Reading' above a column of headings that have their units is no quantity itself.
        bool isCaption = runsDown && all is [{ Cell.Row: 1, Named.Unit: null }, _, ..] && all.Skip(1).All(h => h.Named.Unit is not null);
        Headings = isCaption ? all[1..] : all;
    }

    public SheetTable Table { get; }

    /// <summary>Whether the headings stand one below the other.</summary>
    public bool RunsDown { get; }

    /// <summary>The headings that name quantities.</summary>
    public IReadOnlyList<TableHeading> Headings { get; }

    /// <summary>The first row, its first cell left out where the headings run down.</summary>
    public IReadOnlyList<TableHeading> Top { get; }

    /// <summary>The table with its headings, or null where none names a quantity.</summary>
    public static HeadedTable? Of(SheetTable table, HeadingNames names)
    {
        if (table.Rows.Count == 0 || table.Rows[0].Count == 0 || table.Columns < 2)
        {
            return null;
        }

        HeadedTable down = new(table, true, names);
        HeadedTable across = new(table, false, names);
        // Where as many stand down the side, those that have their units are the headings: 'Reading' above them is none.
        bool sideways = down.Headings.Count > across.Headings.Count
            || (down.Headings.Count == across.Headings.Count && down.Headings.All(h => h.Named.Unit is not null));
        HeadedTable best = sideways || table.Rows.Count == 1 ? down : across;
        return best.Headings.Count > 0 && best.IsOfMeasurements() ? best : null;
    }

    /// <summary>The cells under or beside a heading.</summary>
    public IEnumerable<SheetCell> CellsOf(TableHeading heading) => RunsDown
        ? Table.Rows[heading.Cell.Row - 1].Where(c => c.Column > heading.Cell.Column && !IsOfSomethingElse(Table.At(1, c.Column)))
        : Table.Column(heading.Cell.Column).Where(c => c.Row > heading.Cell.Row && !c.IsContinued);

    /// <summary>The unit that holds for a heading: its own, that of a heading above or below it or beside it, or a cell that is one; or null.</summary>
    public string? UnitOf(TableHeading heading)
    {
        if (heading.Named.Unit is string own)
        {
            return own;
        }

        IEnumerable<SheetCell> around = RunsDown
            ? Table.Rows[heading.Cell.Row - 1].Concat(Table.Rows[0])
            : Enumerable.Range(1, Math.Min(3, Table.Rows.Count)).Select(row => Table.At(row, heading.Cell.Column)).OfType<SheetCell>();
        IEnumerable<string?> units = around.Where(c => c.Text.Length <= LongestHeading).Select(c => HeadingNames.UnitAlone(c.Text) ?? (c.Row <= 2 ? names.Of(c.Text).Unit : null));
        return units.FirstOrDefault(u => u is not null) ?? (!RunsDown && names.Of(Table.Rows[0][0].Text).Column is null ? names.Of(Table.Rows[0][0].Text).Unit : null);
    }

    // 'Crucible' in a list of apparatus is no reading: something has to say that masses are meant.
    private bool IsOfMeasurements() =>
        Headings.Any(h => h.Named.Unit is not null || Quantity().IsMatch(h.Cell.Text))
        || Top.Any(h => h.Named.Unit is not null || Quantity().IsMatch(h.Cell.Text))
        || Headings.Select(h => h.Named.Column).Where(c => c is { IsReading: true }).Distinct().Count() >= 2;

    private TableHeading Heading(SheetCell cell)
    {
        string text = cell.Text;
        bool mayHead = text.Length is > 0 and <= LongestHeading && !NotHeading().IsMatch(text);
        NamedHeading named = mayHead ? names.Of(text) : new NamedHeading(null, null);
        return new TableHeading(cell, named, mayHead && (named.Column is not null || (Quantity().IsMatch(text) && !WithoutUnit().IsMatch(text))));
    }

    // One heading over several columns: theirs stand in the row below.
    private static IEnumerable<SheetCell> SecondRow(SheetTable table, SheetCell[] top) =>
        table.Rows.Count > 2 && top.Any(c => c.Span > 1) ? table.Rows[1].Where(c => !c.IsContinued) : [];

    private static bool IsOfSomethingElse(SheetCell? top) => top is not null && Else().IsMatch(top.Text);

    [GeneratedRegex(@"(?i)\b(mass(es)?|weights?|wt|volume|temperature|temp|(heating|cooling) time|time (taken|of heating|of cooling))\b", RegexOptions.CultureInvariant)]
    private static partial Regex Quantity();

    [GeneratedRegex(@"(?i)\b(ratio|per ?cent(age)?|moles?|formula|number|relative|molar|same|constant|change or not|why|how)\b|%", RegexOptions.CultureInvariant)]
    private static partial Regex WithoutUnit();

    [GeneratedRegex(@"[?=_…]|\.\s*$|\.{3}|\. [A-Z]|\n.*\n.*\n", RegexOptions.CultureInvariant)]
    private static partial Regex NotHeading();

    [GeneratedRegex(@"(?i)\b(time|balance|vessel|group|trial no|unit|date|colour|observations?|notes?|comments?)\b", RegexOptions.CultureInvariant)]
    private static partial Regex Else();
}

/// <summary>A heading of a table.</summary>
/// <param name="Cell">Its cell.</param>
/// <param name="Named">What it names.</param>
/// <param name="IsQuantity">Whether it is the heading of a quantity that has a unit.</param>
internal sealed record TableHeading(SheetCell Cell, NamedHeading Named, bool IsQuantity);
