using Calx.Papers.Texts;
using DocumentFormat.OpenXml;
using DocumentFormat.OpenXml.Packaging;
using DocumentFormat.OpenXml.Wordprocessing;

namespace Calx.Papers.Documents.Word;

/// <summary>Sheets, margins and running heads of a word processor's file.</summary>
internal static class WordPage
{
    private const double SideInMillimetres = 16;
    private const double TopInMillimetres = 14.5;
    private const double FootInMillimetres = 12;

    /// <summary>Width from margin to margin in mm.</summary>
    public static double TextWidthInMillimetres(PaperLook look) => look.Sheet.Width - (2 * SideInMillimetres);

    /// <summary>The sheet, its margins, head and foot.</summary>
    public static SectionProperties Section(MainDocumentPart main, Paper paper)
    {
        double width = TextWidthInMillimetres(paper.Look);
        HeaderPart head = main.AddNewPart<HeaderPart>(WordIds.Next(main));
        head.Header = new Header(Line(WordStyles.Header, width, Word(paper.Heads.Left), Word(paper.Heads.Right)));
        FooterPart foot = main.AddNewPart<FooterPart>(WordIds.Next(main));
        foot.Footer = new Footer(Line(WordStyles.Footer, width, Word(paper.Heads.Foot), [.. Field("PAGE"), .. Word($" {new SharedTexts(paper.Look.Language).OfPages} "), .. Field("NUMPAGES")]));
        (double across, double high) = paper.Look.Sheet;
        return new SectionProperties(
            new HeaderReference { Type = HeaderFooterValues.Default, Id = main.GetIdOfPart(head) },
            new FooterReference { Type = HeaderFooterValues.Default, Id = main.GetIdOfPart(foot) },
            new PageSize { Width = (uint)WordLength.Twips(across), Height = (uint)WordLength.Twips(high) },
            new PageMargin
            {
                Top = WordLength.Twips(TopInMillimetres), Bottom = WordLength.Twips(FootInMillimetres),
                Left = (uint)WordLength.Twips(SideInMillimetres), Right = (uint)WordLength.Twips(SideInMillimetres),
                Header = (uint)WordLength.Twips(9), Footer = (uint)WordLength.Twips(7), Gutter = 0,
            });
    }

    /// <summary>The tint of the sheet, and what the file was made for.</summary>
    public static void Settings(MainDocumentPart main, PaperLook look)
    {
        var settings = new Settings();
        if (look.Tint is string tint)
        {
            main.Document!.DocumentBackground = new DocumentBackground { Color = tint };
            settings.Append(new DisplayBackgroundShape());
        }

        settings.Append(new Compatibility(new CompatibilitySetting { Name = CompatSettingNameValues.CompatibilityMode, Uri = "http://schemas.microsoft.com/office/word", Val = "15" }));
        settings.Append(new ThemeFontLanguages { Val = look.Language.Tag });
        main.AddNewPart<DocumentSettingsPart>().Settings = settings;
    }

    /// <summary>A line with something on the left and something on the right.</summary>
    private static Paragraph Line(string style, double widthInMillimetres, IEnumerable<Run> left, IEnumerable<Run> right)
    {
        var line = new Paragraph(new ParagraphProperties(
            new ParagraphStyleId { Val = style },
            new Tabs(new TabStop { Val = TabStopValues.Right, Position = WordLength.Twips(widthInMillimetres) })));
        line.Append(left);
        line.Append(new Run(new TabChar()));
        line.Append(right);
        return line;
    }

    private static IEnumerable<Run> Word(string text) => WordText.Runs(text);

    /// <summary>What the word processor puts in itself.</summary>
    private static Run[] Field(string name) =>
    [
        new(new FieldChar { FieldCharType = FieldCharValues.Begin }),
        new(new FieldCode($" {name} ") { Space = SpaceProcessingModeValues.Preserve }),
        new(new FieldChar { FieldCharType = FieldCharValues.Separate }),
        new(new Text("1")),
        new(new FieldChar { FieldCharType = FieldCharValues.End }),
    ];
}
