using Calx.Papers.Documents;
using Calx.Papers.Texts;
using DocumentFormat.OpenXml;
using DocumentFormat.OpenXml.Spreadsheet;

namespace Calx.Papers.Spreadsheets;

/// <summary>A drawn-up sheet as its file has it (ECMA-376 part 1, 18.3.1.99); the order of the parts is the standard's.</summary>
internal sealed class SheetMarkup(SheetDraft sheet, double points, SheetPrint print)
{
    /// <summary>Numbers of the papers (ECMA-376 part 1, 18.3.1.63).</summary>
    private const uint Letter = 1, A4 = 9;

    public Worksheet Of(IReadOnlyDictionary<int, double> widths, IEnumerable<Row> rows, IReadOnlyList<string> merged)
    {
        var worksheet = new Worksheet(
            new SheetProperties(new PageSetupProperties { FitToPage = true }),
            new SheetDimension { Reference = $"A1:{SheetDraft.Reference(sheet.LastRow, sheet.LastColumn)}" },
            new SheetViews(View()),
            new SheetFormatProperties { DefaultRowHeight = Math.Round(points * 1.5, 1), CustomHeight = true },
            new Columns(widths.Select(w => new Column { Min = (uint)w.Key, Max = (uint)w.Key, Width = w.Value, CustomWidth = true })),
            new SheetData(rows));
        if (!sheet.IsFree)
        {
            // Without a password: a slip is kept off a formula, and nobody is kept from changing what is theirs.
            worksheet.Append(new SheetProtection { Sheet = true, Objects = true, Scenarios = true, FormatColumns = false, FormatRows = false });
        }

        if (sheet.Filtered is string filtered)
        {
            worksheet.Append(new AutoFilter { Reference = filtered.Replace("$", string.Empty, StringComparison.Ordinal) });
        }

        if (merged.Count > 0)
        {
            worksheet.Append(new MergeCells(merged.Select(m => new MergeCell { Reference = m })));
        }

        worksheet.Append(sheet.Checked.Select(Marked));
        if (sheet.Checked.Count > 0)
        {
            worksheet.Append(new DataValidations(sheet.Checked.Select(c => Validated(c, new WorkbookTexts(print.Language)))) { Count = (uint)sheet.Checked.Count });
        }

        worksheet.Append(
            new PrintOptions { HorizontalCentered = true },
            new PageMargins { Left = 0.5, Right = 0.5, Top = 0.75, Bottom = 0.7, Header = 0.35, Footer = 0.35 },
            new PageSetup
            {
                PaperSize = print.Size == SheetSize.Letter ? Letter : A4, Orientation = OrientationValues.Landscape, FitToWidth = 1, FitToHeight = sheet.IsOnePage ? 1u : 0u,
            },
            new HeaderFooter(new OddHeader(print.Head), new OddFooter(print.Foot)));
        return worksheet;
    }

    private SheetView View()
    {
        var view = new SheetView { WorkbookViewId = 0, ShowGridLines = false };
        if (sheet.HeadingRow > 0)
        {
            string first = SheetDraft.Reference(sheet.HeadingRow + 1, sheet.FrozenColumns + 1);
            PaneValues active = sheet.FrozenColumns > 0 ? PaneValues.BottomRight : PaneValues.BottomLeft;
            view.Append(
                new Pane
                {
                    HorizontalSplit = sheet.FrozenColumns > 0 ? sheet.FrozenColumns : null,
                    VerticalSplit = sheet.HeadingRow,
                    TopLeftCell = first,
                    ActivePane = active,
                    State = PaneStateValues.Frozen,
                },
                new Selection { Pane = active, ActiveCell = first, SequenceOfReferences = new ListValue<StringValue>([first]) });
        }

        return view;
    }

    private static ConditionalFormatting Marked(CheckedRange range, int at) => new(
        new ConditionalFormattingRule(new Formula(ReadingCheck.Fails(range.First, range.IsMass)))
        {
            Type = ConditionalFormatValues.Expression, FormatId = 0, Priority = at + 1,
        })
    {
        SequenceOfReferences = new ListValue<StringValue>([range.Range]),
    };

    private static DataValidation Validated(CheckedRange range, WorkbookTexts texts) => new(new Formula1(ReadingCheck.Passes(range.First, range.IsMass)))
    {
        Type = DataValidationValues.Custom,
        ErrorStyle = DataValidationErrorStyleValues.Warning,
        AllowBlank = true,
        ShowErrorMessage = true,
        ErrorTitle = texts.CheckTitle,
        Error = texts.CheckMessage,
        SequenceOfReferences = new ListValue<StringValue>([range.Range]),
    };
}
