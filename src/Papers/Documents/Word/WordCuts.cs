using DocumentFormat.OpenXml;
using DocumentFormat.OpenXml.Wordprocessing;

namespace Calx.Papers.Documents.Word;

/// <summary>Parts that are cut apart, in a word processor's file: rows of a table without lines at its sides, none of them split between pages.</summary>
internal static class WordCuts
{
    private const uint Line = 12;

    /// <summary>A row a part, a broken line below each.</summary>
    public static Table Of(double widthInMillimetres, OpenXmlElement[][] parts) => new(
    [
        new TableProperties(
            new TableWidth { Width = WordLength.Text(widthInMillimetres), Type = TableWidthUnitValues.Dxa },
            new TableBorders(
                new BottomBorder { Val = BorderValues.Dashed, Size = Line },
                new InsideHorizontalBorder { Val = BorderValues.Dashed, Size = Line }),
            new TableLayout { Type = TableLayoutValues.Fixed },
            new TableCellMarginDefault(
                new TopMargin { Width = WordLength.Text(2.4), Type = TableWidthUnitValues.Dxa },
                new TableCellLeftMargin { Width = 0, Type = TableWidthValues.Dxa },
                new BottomMargin { Width = WordLength.Text(1), Type = TableWidthUnitValues.Dxa },
                new TableCellRightMargin { Width = 0, Type = TableWidthValues.Dxa })),
        new TableGrid(new GridColumn { Width = WordLength.Text(widthInMillimetres) }),
        .. parts.Select(part =>
        {
            var cell = new TableCell(new TableCellProperties(new TableCellWidth { Width = WordLength.Text(widthInMillimetres), Type = TableWidthUnitValues.Dxa }));
            cell.Append(part);
            return new TableRow(new TableRowProperties(new CantSplit()), cell);
        }),
    ]);
}
