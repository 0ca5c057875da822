using DocumentFormat.OpenXml;
using DocumentFormat.OpenXml.Wordprocessing;

namespace Calx.Papers.Documents.Word;

/// <summary>Tables of a paper, and frames around parts of it, in a word processor's file.</summary>
internal static class WordTables
{
    /// <summary>Space between a cell's frame and its text, left and right, in mm.</summary>
    public const double PaddingInMillimetres = 2.2;

    /// <summary>Space between columns, in mm.</summary>
    public const double BetweenInMillimetres = 4;

    private const uint Thin = 6;
    private const uint Thick = 18;

    /// <summary>A table as wide as the text.</summary>
    public static Table Of(PaperTable table, double widthInMillimetres)
    {
        double all = table.Columns.Sum(c => c.Share);
        double[] widths = [.. table.Columns.Select(c => widthInMillimetres * c.Share / all)];
        var written = new Table(
            new TableProperties(
                new TableStyle { Val = table.Look == TableRuling.Framed ? WordStyles.FramedTable : WordStyles.RuledTable },
                new TableWidth { Width = WordLength.Text(widthInMillimetres), Type = TableWidthUnitValues.Dxa },
                new TableLayout { Type = TableLayoutValues.Fixed },
                new TableLook { Val = "0020", FirstRow = table.HasHeadings, LastRow = false, FirstColumn = false, LastColumn = false, NoHorizontalBand = true, NoVerticalBand = true }),
            new TableGrid(widths.Select(w => new GridColumn { Width = WordLength.Text(w) })));
        if (table.HasHeadings)
        {
            var row = new TableRow(new TableRowProperties(new CantSplit(), new TableHeader()));
            row.Append(table.Columns.Select((c, i) => Cell(widths[i], WordStyles.TableHeading, c.Heading, c.IsNumber, TableVerticalAlignmentValues.Bottom)));
            written.Append(row);
        }

        foreach (IReadOnlyList<PaperCell> cells in table.Rows)
        {
            var properties = new TableRowProperties(new CantSplit());
            if (cells.Max(c => c.HeightInMillimetres) is var height and > 0)
            {
                properties.Append(new TableRowHeight { Val = (uint)WordLength.Twips(height), HeightType = HeightRuleValues.AtLeast });
            }

            var row = new TableRow(properties);
            TableVerticalAlignmentValues aligned = table.Look == TableRuling.Framed ? TableVerticalAlignmentValues.Center : TableVerticalAlignmentValues.Top;
            row.Append(cells.Select((c, i) => Cell(widths[i], WordStyles.TableText, c.Text, table.Columns[i].IsNumber && !c.IsHeading, aligned)));
            written.Append(row);
        }

        return written;
    }

    /// <summary>A frame around parts of a paper, or around nothing, to work in.</summary>
    public static Table Frame(double widthInMillimetres, bool thick, double heightInMillimetres, IEnumerable<OpenXmlElement> content)
    {
        uint size = thick ? Thick : Thin;
        var row = new TableRowProperties(new CantSplit());
        if (heightInMillimetres > 0)
        {
            row.Append(new TableRowHeight { Val = (uint)WordLength.Twips(heightInMillimetres), HeightType = HeightRuleValues.Exact });
        }

        var cell = new TableCell(new TableCellProperties(new TableCellWidth { Width = WordLength.Text(widthInMillimetres), Type = TableWidthUnitValues.Dxa }));
        cell.Append(content);
        return new Table(
            new TableProperties(
                new TableWidth { Width = WordLength.Text(widthInMillimetres), Type = TableWidthUnitValues.Dxa },
                new TableBorders(
                    new TopBorder { Val = BorderValues.Single, Size = size },
                    new LeftBorder { Val = BorderValues.Single, Size = size },
                    new BottomBorder { Val = BorderValues.Single, Size = size },
                    new RightBorder { Val = BorderValues.Single, Size = size }),
                new TableLayout { Type = TableLayoutValues.Fixed },
                new TableCellMarginDefault(
                    new TopMargin { Width = WordLength.Text(1.2), Type = TableWidthUnitValues.Dxa },
                    new TableCellLeftMargin { Width = (short)WordLength.Twips(PaddingInMillimetres), Type = TableWidthValues.Dxa },
                    new BottomMargin { Width = WordLength.Text(0.8), Type = TableWidthUnitValues.Dxa },
                    new TableCellRightMargin { Width = (short)WordLength.Twips(PaddingInMillimetres), Type = TableWidthValues.Dxa })),
            new TableGrid(new GridColumn { Width = WordLength.Text(widthInMillimetres) }),
            new TableRow(row, cell));
    }

    /// <summary>Strips below each other with broken lines between them; none is split between pages.</summary>
    public static Table Strips(double widthInMillimetres, OpenXmlElement[][] strips) => new(
    [
        new TableProperties(
            new TableWidth { Width = WordLength.Text(widthInMillimetres), Type = TableWidthUnitValues.Dxa },
            new TableBorders(
                new TopBorder { Val = BorderValues.Single, Size = Thin },
                new LeftBorder { Val = BorderValues.Single, Size = Thin },
                new BottomBorder { Val = BorderValues.Single, Size = Thin },
                new RightBorder { Val = BorderValues.Single, Size = Thin },
                new InsideHorizontalBorder { Val = BorderValues.Dashed, Size = 2 * Thin }),
            new TableLayout { Type = TableLayoutValues.Fixed },
            new TableCellMarginDefault(
                new TopMargin { Width = WordLength.Text(1.2), Type = TableWidthUnitValues.Dxa },
                new TableCellLeftMargin { Width = (short)WordLength.Twips(PaddingInMillimetres), Type = TableWidthValues.Dxa },
                new BottomMargin { Width = WordLength.Text(0.8), Type = TableWidthUnitValues.Dxa },
                new TableCellRightMargin { Width = (short)WordLength.Twips(PaddingInMillimetres), Type = TableWidthValues.Dxa })),
        new TableGrid(new GridColumn { Width = WordLength.Text(widthInMillimetres) }),
        .. strips.Select(strip =>
        {
            var cell = new TableCell(new TableCellProperties(new TableCellWidth { Width = WordLength.Text(widthInMillimetres), Type = TableWidthUnitValues.Dxa }));
            cell.Append(strip);
            return new TableRow(new TableRowProperties(new CantSplit()), cell);
        }),
    ]);

    /// <summary>Columns without lines.</summary>
    public static Table Columns(OpenXmlElement[][] columns, double[] widthsInMillimetres, bool onOneSide = false)
    {
        TableRow row = onOneSide ? new TableRow(new TableRowProperties(new CantSplit())) : new TableRow();
        for (int i = 0; i < widthsInMillimetres.Length; i++)
        {
            var cell = new TableCell(new TableCellProperties(new TableCellWidth { Width = WordLength.Text(widthsInMillimetres[i]), Type = TableWidthUnitValues.Dxa }));
            cell.Append(i < columns.Length ? columns[i] : [new Paragraph()]);
            row.Append(cell);
        }

        return new Table(
            new TableProperties(
                new TableWidth { Width = WordLength.Text(widthsInMillimetres.Sum()), Type = TableWidthUnitValues.Dxa },
                new TableLayout { Type = TableLayoutValues.Fixed },
                new TableCellMarginDefault(
                    new TableCellLeftMargin { Width = 0, Type = TableWidthValues.Dxa },
                    new TableCellRightMargin { Width = (short)WordLength.Twips(BetweenInMillimetres), Type = TableWidthValues.Dxa })),
            new TableGrid(widthsInMillimetres.Select(w => new GridColumn { Width = WordLength.Text(w) })),
            row);
    }

    private static TableCell Cell(double widthInMillimetres, string style, Phrase text, bool isNumber, TableVerticalAlignmentValues aligned) => new(
        new TableCellProperties(
            new TableCellWidth { Width = WordLength.Text(widthInMillimetres), Type = TableWidthUnitValues.Dxa },
            new TableCellVerticalAlignment { Val = aligned }),
        isNumber ? WordText.Paragraph(style, text, new Justification { Val = JustificationValues.Right }) : WordText.Paragraph(style, text));
}
