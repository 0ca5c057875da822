using Calx.Papers.Documents;
using DocumentFormat.OpenXml;
using DocumentFormat.OpenXml.Spreadsheet;

namespace Calx.Papers.Spreadsheets;

/// <summary>The looks that the cells of a workbook have, each once, with the number that a cell names it by.</summary>
/// <param name="points">Size of the usual letters.</param>
internal sealed class LookTable(double points)
{
    private const double UsualPoints = 11;
    private const double LargePoints = 18;

    /// <summary>For a workbook that is printed so.</summary>
    public LookTable(PaperLook look)
        : this(look.IsLarge ? LargePoints : UsualPoints)
    {
    }

    /// <summary>Formats of one's own are numbered from here (ECMA-376 part 1, 18.8.30).</summary>
    private const uint FirstFormat = 164;

    private const string Typeface = "Calibri";
    private readonly List<CellLook> looks = [CellLook.Plain];

    /// <summary>Size of the usual letters in points.</summary>
    public double Points => points;

    /// <summary>The number of a look.</summary>
    public uint Of(CellLook look)
    {
        int at = looks.IndexOf(look);
        if (at < 0)
        {
            at = looks.Count;
            looks.Add(look);
        }

        return (uint)at;
    }

    /// <summary>All of them as the workbook lists them.</summary>
    public Stylesheet Stylesheet()
    {
        string[] formats = [.. looks.Select(l => l.Format).OfType<string>().Distinct()];
        (bool IsBold, double Scale)[] fonts = [.. looks.Select(l => (l.IsBold, l.Scale)).Distinct()];
        string[] fills = [.. looks.Select(l => l.Fill).OfType<string>().Distinct()];
        var sheet = new Stylesheet();
        if (formats.Length > 0)
        {
            sheet.Append(new NumberingFormats(formats.Select((f, i) => new NumberingFormat { NumberFormatId = FirstFormat + (uint)i, FormatCode = f })));
        }

        sheet.Append(
            new Fonts(fonts.Select(f => Letters(f.IsBold, f.Scale))),
            // The first two are the program's own, whatever is written there.
            new Fills([Pattern(PatternValues.None), Pattern(PatternValues.Gray125), .. fills.Select(Ground)]),
            new Borders(new Border(), Frame()),
            new CellStyleFormats(new CellFormat()),
            new CellFormats(looks.Select(l => Format(l, formats, fonts, fills))),
            new CellStyles(new CellStyle { Name = "Normal", FormatId = 0, BuiltinId = 0 }),
            new DifferentialFormats(Warning()));
        return sheet;
    }

    private static CellFormat Format(CellLook look, string[] formats, (bool IsBold, double Scale)[] fonts, string[] fills) => new()
    {
        NumberFormatId = look.Format is null ? 0 : FirstFormat + (uint)Array.IndexOf(formats, look.Format),
        FontId = (uint)Array.IndexOf(fonts, (look.IsBold, look.Scale)),
        FillId = look.Fill is null ? 0 : 2 + (uint)Array.IndexOf(fills, look.Fill),
        BorderId = look.IsFramed ? 1u : 0u,
        FormatId = 0,
        QuotePrefix = look.IsQuoted ? true : null,
        ApplyNumberFormat = look.Format is not null,
        ApplyFont = true,
        ApplyFill = look.Fill is not null,
        ApplyBorder = look.IsFramed,
        ApplyAlignment = true,
        ApplyProtection = true,
        Alignment = new Alignment
        {
            Horizontal = look.Stands switch
            {
                Side.Left => HorizontalAlignmentValues.Left,
                Side.Right => HorizontalAlignmentValues.Right,
                Side.Middle => HorizontalAlignmentValues.Center,
                _ => null,
            },
            // A little off the frame.
            Indent = look.IsFramed && look.Stands == Side.Left && !look.IsUpright ? 1u : null,
            Vertical = look.IsUpright ? VerticalAlignmentValues.Bottom : VerticalAlignmentValues.Center,
            WrapText = look.Wraps ? true : null,
            TextRotation = look.IsUpright ? 90u : null,
        },
        Protection = new Protection { Locked = !look.IsUnlocked },
    };

    private Font Letters(bool isBold, double scale)
    {
        var font = new Font();
        if (isBold)
        {
            font.Append(new Bold());
        }

        font.Append(new FontSize { Val = Math.Round(points * scale) }, new FontName { Val = Typeface });
        return font;
    }

    private static Fill Pattern(PatternValues kind) => new(new PatternFill { PatternType = kind });

    private static Fill Ground(string colour) => new(new PatternFill(
        new ForegroundColor { Rgb = $"FF{colour}" }, new BackgroundColor { Indexed = 64 }) { PatternType = PatternValues.Solid });

    private static Border Frame() => new(
        Line(new LeftBorder()), Line(new RightBorder()), Line(new TopBorder()), Line(new BottomBorder()), new DiagonalBorder());

    private static T Line<T>(T border)
        where T : BorderPropertiesType
    {
        border.Style = BorderStyleValues.Thin;
        border.Append(new Color { Rgb = "FF777777" });
        return border;
    }

    /// <summary>Bold and slanting on a darker ground: seen on a grey print too.</summary>
    private static DifferentialFormat Warning() => new(
        new Font(new Bold(), new Italic()),
        new Fill(new PatternFill(new BackgroundColor { Rgb = "FFF4B183" }) { PatternType = PatternValues.Solid }));
}
