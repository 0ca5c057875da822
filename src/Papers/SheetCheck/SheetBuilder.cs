using System.Text;

namespace Calx.Papers.SheetCheck;

/// <summary>Puts a sheet together as its texts come along from front to back, and stops at the limits.</summary>
/// <param name="notes">What a person should know of the reading.</param>
internal sealed class SheetBuilder(IReadOnlyList<string> notes)
{
    private readonly List<SheetParagraph> paragraphs = [];
    private readonly List<SheetTable?> tables = [];
    private readonly Stack<OpenTable> open = [];
    private int ofPage;
    private int all;
    private int characters;

    /// <summary>The sheet.</summary>
    public Sheet Build() => new(paragraphs, [.. tables.OfType<SheetTable>()], notes);

    /// <summary>A paragraph of the page, or of the cell that is open.</summary>
    public void Paragraph(string text, bool isHeading)
    {
        Count(text);
        if (open.TryPeek(out OpenTable? table) && table.Cell is OpenCell cell)
        {
            cell.Add(text);
            if (!string.IsNullOrWhiteSpace(text))
            {
                paragraphs.Add(new SheetParagraph(text, cell.Place, isHeading, InTable: true));
            }
        }
        else if (!string.IsNullOrWhiteSpace(text))
        {
            paragraphs.Add(new SheetParagraph(text, SheetPlace.Paragraph(++ofPage), isHeading, InTable: false));
        }
    }

    public void StartTable()
    {
        tables.Add(null);
        open.Push(new OpenTable(tables.Count));
    }

    public void EndTable()
    {
        if (open.TryPop(out OpenTable? table))
        {
            tables[table.Number - 1] = new SheetTable(table.Number, [.. table.Rows]);
        }
    }

    public void StartRow() => Current?.StartRow(paragraphs.Count);

    /// <summary>Columns that a row leaves out at its beginning.</summary>
    public void SkipColumns(int count) => Current?.Skip(count);

    /// <summary>The row was deleted with its changes tracked: it is not on the page.</summary>
    public void RowIsDeleted()
    {
        if (Current is OpenTable table)
        {
            table.RowIsDeleted = true;
        }
    }

    public void EndRow()
    {
        if (Current is OpenTable { RowIsDeleted: true } deleted)
        {
            paragraphs.RemoveRange(deleted.ParagraphsBefore, paragraphs.Count - deleted.ParagraphsBefore);
        }

        Current?.EndRow();
    }

    public void StartCell() => Current?.StartCell();

    /// <summary>How far the cell reaches.</summary>
    public void CellSpans(int columns) => Current?.Cell?.Widen(columns);

    /// <summary>The cell is the lower part of one above.</summary>
    public void CellContinues() => Current?.Cell?.Continue();

    public void EndCell() => Current?.EndCell();

    private OpenTable? Current => open.TryPeek(out OpenTable? table) ? table : null;

    private void Count(string text)
    {
        all++;
        characters += text.Length;
        if (text.Length > SheetLimits.LongestParagraph || all > SheetLimits.MostParagraphs || characters > SheetLimits.MostCharacters)
        {
            throw new SheetTooLongException();
        }
    }

    private sealed class OpenTable(int number)
    {
        private List<SheetCell> row = [];
        private int next = 1;

        public int Number => number;

        public List<IReadOnlyList<SheetCell>> Rows { get; } = [];

        public OpenCell? Cell { get; private set; }

        public bool RowIsDeleted { get; set; }

        public int ParagraphsBefore { get; private set; }

        public void StartRow(int paragraphs) => (row, next, RowIsDeleted, ParagraphsBefore) = ([], 1, false, paragraphs);

        public void Skip(int count) => next += Math.Clamp(count, 0, SheetLimits.MostColumns);

        public void StartCell() => Cell = new OpenCell(number, Rows.Count + 1, next);

        public void EndCell()
        {
            if (Cell is not OpenCell cell)
            {
                return;
            }

            string text = cell.Continues
                ? Rows.Count == 0 ? "" : Rows[^1].FirstOrDefault(c => c.Column <= cell.Column && cell.Column < c.Column + c.Span)?.Text ?? ""
                : cell.Text;
            row.Add(new SheetCell(cell.Row, cell.Column, cell.Span, text, cell.Place, cell.Continues));
            next = cell.Column + cell.Span;
            Cell = null;
        }

        public void EndRow()
        {
            if (!RowIsDeleted)
            {
                Rows.Add(row);
            }
        }
    }

    private sealed class OpenCell(int table, int row, int column)
    {
        private readonly StringBuilder text = new();

        public int Row => row;

        public int Column => column;

        public int Span { get; private set; } = 1;

        public bool Continues { get; private set; }

        public SheetPlace Place { get; } = SheetPlace.Cell(table, row, column);

        public string Text => text.ToString().Trim();

        public void Add(string paragraph) => text.Append(text.Length == 0 ? "" : "\n").Append(paragraph);

        public void Widen(int columns) => Span = Math.Clamp(columns, 1, SheetLimits.MostColumns);

        public void Continue() => Continues = true;
    }
}
