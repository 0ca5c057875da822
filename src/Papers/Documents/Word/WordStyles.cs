using System.Globalization;
using DocumentFormat.OpenXml;
using DocumentFormat.OpenXml.Packaging;
using DocumentFormat.OpenXml.Wordprocessing;

namespace Calx.Papers.Documents.Word;

/// <summary>The styles of a document: one place where a teacher changes how all of it looks.</summary>
internal static class WordStyles
{
    public const string Body = "Normal";
    public const string Title = "Title";
    public const string Heading1 = "Heading1";
    public const string Heading2 = "Heading2";
    public const string Lead = "Lead";
    public const string Huge = "Huge";
    public const string Small = "SmallText";
    public const string Step = "Step";
    public const string Given = "Given";
    public const string ListItem = "ListItem";
    public const string TableText = "TableText";
    public const string TableHeading = "TableHeading";
    public const string Caption = "Caption";
    public const string Figure = "Figure";
    public const string Equation = "Equation";
    public const string WritingLine = "WritingLine";
    public const string PanelTitle = "PanelTitle";
    public const string PanelItem = "PanelItem";
    public const string Draft = "Draft";
    public const string Gap = "Gap";
    public const string Header = "Header";
    public const string Footer = "Footer";
    public const string RuledTable = "RuledTable";
    public const string FramedTable = "FramedTable";

    /// <summary>Most machines of a school have it or one of the same measure.</summary>
    private const string Typeface = "Calibri";

    /// <summary>Puts the styles into a document.</summary>
    public static void Write(MainDocumentPart main, PaperLook look)
    {
        double size = look.IsWall ? 22 * look.WallScale : look.IsLarge ? 18 : look.IsOneStep ? 14 : look.IsDense ? 9.5 : 10;
        // Who needs 18 point needs it everywhere.
        double? smaller = look.IsLarge || look.IsOneStep ? size : null;
        var styles = new Styles(Defaults(size, look.Language.Tag));
        styles.Append(Paragraph(Body, "Normal", new Spacing(0, look.IsDense ? 1.2 : 2), null, isDefault: true));
        styles.Append(Paragraph(Title, "Title", new Spacing(0, look.IsDense ? 1.5 : 2.5), new Letters((look.IsWall ? 1.2 : 1.7) * size, true), keeps: true));
        styles.Append(Paragraph(Heading1, "heading 1", new Spacing(look.IsDense ? 2.2 : 2.8, 1), new Letters(1.22 * size, true), keeps: true, outline: 0, above: true));
        styles.Append(Paragraph(Heading2, "heading 2", new Spacing(2.5, 1), new Letters(size, true), keeps: true, outline: 1));
        styles.Append(Paragraph(Lead, "Lead", new Spacing(0, 2.6), new Letters(1.14 * size, false)));
        styles.Append(Paragraph(Huge, "Huge", new Spacing(0, 0), new Letters(2.7 * size, true), keeps: true));
        styles.Append(Paragraph(Small, "Small text", new Spacing(0, 1.2), new Letters(smaller ?? (0.83 * size), false)));
        styles.Append(Paragraph(Given, "Given", new Spacing(0, look.IsDense ? 1.2 : 2), null, keeps: true));
        styles.Append(Paragraph(Step, "Step", new Spacing(1, 5), new Letters(look.IsLarge ? 26 : 24, false)));
        styles.Append(Paragraph(ListItem, "List Paragraph", new Spacing(0, look.IsWall ? 1.5 : look.IsDense ? 0.3 : 0.8), null));
        styles.Append(Paragraph(TableText, "Table text", new Spacing(look.IsDense ? 0.2 : 0.5, look.IsDense ? 0.2 : 0.5), null));
        styles.Append(Paragraph(TableHeading, "Table heading", new Spacing(0.5, 0.5), new Letters(smaller ?? (0.86 * size), true), keeps: true));
        styles.Append(Paragraph(Caption, "caption", new Spacing(0.6, look.IsDense ? 1 : 2.5), new Letters(smaller ?? ((look.IsWall ? 1 : 0.86) * size), false)));
        styles.Append(Paragraph(Figure, "Figure", new Spacing(1.5, 0.5), null, keeps: true));
        styles.Append(Paragraph(Equation, "Equation", new Spacing(1, 1.5), null));
        styles.Append(Paragraph(WritingLine, "Writing line", new Spacing(look.IsLarge ? 8 : 2.5, 0), null, ruled: true));
        styles.Append(Paragraph(PanelTitle, "Panel title", new Spacing(0, 0.8), new Letters(size, true), keeps: true));
        styles.Append(Paragraph(PanelItem, "Panel item", new Spacing(0, 0.3), new Letters(smaller ?? (0.92 * size), false)));
        styles.Append(Paragraph(Draft, "Draft", new Spacing(0, 3), new Letters(size, true), framed: true));
        styles.Append(Paragraph(Gap, "Gap", new Spacing(0, 0), new Letters(look.IsDense ? 2 : 4, false)));
        styles.Append(Paragraph(Header, "header", new Spacing(0, 0), new Letters(8.5, false)));
        styles.Append(Paragraph(Footer, "footer", new Spacing(0, 0), new Letters(8.5, false)));
        styles.Append(TableOf(RuledTable, "Ruled table", framed: false));
        styles.Append(TableOf(FramedTable, "Framed table", framed: true));
        main.AddNewPart<StyleDefinitionsPart>().Styles = styles;
    }

    private static DocDefaults Defaults(double points, string language) => new(
        new RunPropertiesDefault(new RunPropertiesBaseStyle(
            new RunFonts { Ascii = Typeface, HighAnsi = Typeface, ComplexScript = Typeface, EastAsia = Typeface },
            new FontSize { Val = Half(points) },
            new FontSizeComplexScript { Val = Half(points) },
            new Languages { Val = language })),
        new ParagraphPropertiesDefault(new ParagraphPropertiesBaseStyle(
            new WidowControl(),
            new SpacingBetweenLines { Line = "240", LineRule = LineSpacingRuleValues.Auto })));

    private static Style Paragraph(
        string id, string name, Spacing spacing, Letters? letters,
        bool isDefault = false, bool keeps = false, bool above = false, bool ruled = false, bool framed = false, int? outline = null)
    {
        var style = new Style { Type = StyleValues.Paragraph, StyleId = id, Default = isDefault ? true : null, CustomStyle = IsBuiltIn(id) ? null : true };
        style.Append(new StyleName { Val = name });
        if (!isDefault)
        {
            style.Append(new BasedOn { Val = Body });
        }

        style.Append(new PrimaryStyle());
        var properties = new StyleParagraphProperties();
        if (keeps)
        {
            properties.Append(new KeepNext());
            properties.Append(new KeepLines());
        }

        if (Borders(above, ruled, framed) is ParagraphBorders borders)
        {
            properties.Append(borders);
        }

        properties.Append(new SpacingBetweenLines { Before = WordLength.Text(spacing.Before), After = WordLength.Text(spacing.After) });
        if (framed)
        {
            properties.Append(new Justification { Val = JustificationValues.Center });
        }

        if (outline is int level)
        {
            properties.Append(new OutlineLevel { Val = level });
        }

        style.Append(properties);
        if (letters is not null)
        {
            var look = new StyleRunProperties();
            if (letters.IsBold)
            {
                look.Append(new Bold());
            }

            look.Append(new FontSize { Val = Half(letters.Points) });
            style.Append(look);
        }

        return style;
    }

    private static ParagraphBorders? Borders(bool above, bool ruled, bool framed) => framed
        ? new ParagraphBorders(Edge<TopBorder>(12), Edge<LeftBorder>(12), Edge<BottomBorder>(12), Edge<RightBorder>(12))
        : above ? new ParagraphBorders(Edge<TopBorder>(8, space: 4))
        : ruled ? new ParagraphBorders(Edge<BottomBorder>(4), Edge<BetweenBorder>(4))
        : null;

    private static T Edge<T>(uint size, uint space = 1)
        where T : BorderType, new() => new() { Val = BorderValues.Single, Size = size, Space = space };

    private static Style TableOf(string id, string name, bool framed)
    {
        TableBorders borders = framed
            ? new TableBorders(Edge<TopBorder>(8, 0), Edge<LeftBorder>(8, 0), Edge<BottomBorder>(8, 0), Edge<RightBorder>(8, 0), Edge<InsideHorizontalBorder>(8, 0), Edge<InsideVerticalBorder>(8, 0))
            : new TableBorders(Edge<BottomBorder>(4, 0), Edge<InsideHorizontalBorder>(4, 0));
        return new Style(
            new StyleName { Val = name },
            new PrimaryStyle(),
            new StyleTableProperties(
                borders,
                new TableCellMarginDefault(
                    new TableCellLeftMargin { Width = (short)WordLength.Twips(1.6), Type = TableWidthValues.Dxa },
                    new TableCellRightMargin { Width = (short)WordLength.Twips(1.6), Type = TableWidthValues.Dxa })))
        { Type = StyleValues.Table, StyleId = id, CustomStyle = true };
    }

    private static bool IsBuiltIn(string id) => id is Body or Title or Heading1 or Heading2 or Caption or Header or Footer;

    private static string Half(double points) => Math.Round(2 * points).ToString(CultureInfo.InvariantCulture);

    private sealed record Spacing(double Before, double After);

    private sealed record Letters(double Points, bool IsBold);
}
