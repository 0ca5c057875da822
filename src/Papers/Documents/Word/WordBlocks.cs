using DocumentFormat.OpenXml;
using DocumentFormat.OpenXml.Packaging;
using DocumentFormat.OpenXml.Wordprocessing;

namespace Calx.Papers.Documents.Word;

/// <summary>The parts of a paper in a word processor's file.</summary>
/// <param name="main">The document that pictures are put into.</param>
/// <param name="numbering">The document's lists.</param>
/// <param name="widthInMillimetres">Width from margin to margin.</param>
/// <param name="isInPanel">Whether they stand in a frame, whose letters are somewhat smaller.</param>
internal sealed class WordBlocks(MainDocumentPart main, WordNumbering numbering, double widthInMillimetres, bool isInPanel = false)
{
    private readonly WordPictures pictures = new(main);

    /// <summary>Writes parts into the body or a cell.</summary>
    public void Write(OpenXmlCompositeElement into, IEnumerable<PaperBlock> blocks)
    {
        foreach (PaperBlock block in blocks)
        {
            into.Append(Written(block));
        }
    }

    private IEnumerable<OpenXmlElement> Written(PaperBlock block) => block switch
    {
        PaperBlock.Heading heading => [WordText.Paragraph(heading.Level == 1 ? WordStyles.Heading1 : WordStyles.Heading2, heading.Text)],
        PaperBlock.Paragraph paragraph => [WordText.Paragraph(StyleOf(paragraph.Look), paragraph.Text)],
        PaperBlock.Items items => Items(items),
        PaperBlock.Table table => [WordTables.Of(table.Content, widthInMillimetres), Gap()],
        PaperBlock.Figure figure => Figure(figure),
        PaperBlock.Equation equation => [WordMath.Paragraph(equation.Content)],
        PaperBlock.WritingLines lines => Enumerable.Range(0, lines.Count).Select(_ => WordText.Paragraph(WordStyles.WritingLine, "")),
        PaperBlock.WorkingSpace space => [WordTables.Frame(widthInMillimetres, thick: false, space.HeightInMillimetres, [new Paragraph()]), Gap()],
        PaperBlock.Panel panel => Panel(panel),
        PaperBlock.Beside beside => Beside(beside),
        PaperBlock.FoldOver fold => FoldOver(fold),
        PaperBlock.CutApart cut => [WordCuts.Of(widthInMillimetres, [.. cut.Parts.Select(Content)])],
        // At the top of the new side, not at the end of the old one: where that is full, an end of its own would make an empty side.
        PaperBlock.PageBreak => [new Paragraph(new ParagraphProperties(new ParagraphStyleId { Val = WordStyles.Gap }, new PageBreakBefore()))],
        _ => throw new ArgumentException($"{block.GetType().Name} is no part of a paper.", nameof(block)),
    };

    private OpenXmlElement[] Items(PaperBlock.Items items)
    {
        int list = numbering.Begin(items.Kind);
        OpenXmlElement[] written =
        [
            .. items.Texts.Select(text => WordText.Paragraph(
                isInPanel ? WordStyles.PanelItem : WordStyles.ListItem, text, new NumberingProperties(new NumberingLevelReference { Val = 0 }, new NumberingId { Val = list }))),
        ];
        if (items.Columns == 1 || written.Length < items.Columns)
        {
            return written;
        }

        int rows = (written.Length + items.Columns - 1) / items.Columns;
        // Down the first column and then down the next: on two sides the order of the list would be lost.
        return [WordTables.Columns([.. written.Chunk(rows)], [.. Enumerable.Repeat(widthInMillimetres / items.Columns, items.Columns)], onOneSide: true), Gap()];
    }

    /// <summary>A table without lines: what a word processor has for things side by side.</summary>
    private OpenXmlElement[] Beside(PaperBlock.Beside beside)
    {
        double[] widths = [widthInMillimetres * beside.LeftShare, widthInMillimetres * (1 - beside.LeftShare)];
        OpenXmlElement[][] columns =
        [
            .. new[] { beside.Left, beside.Right }.Zip(widths, (blocks, width) =>
                new WordBlocks(main, numbering, width - WordTables.BetweenInMillimetres).Content(blocks)),
        ];
        return [WordTables.Columns(columns, widths), Gap()];
    }

    /// <summary>What stands in a cell: it ends with a paragraph, or the file would be damaged.</summary>
    private OpenXmlElement[] Content(IEnumerable<PaperBlock> blocks)
    {
        OpenXmlElement[] content = [.. blocks.SelectMany(Written)];
        return content is [.., Paragraph] ? content : [.. content, Gap()];
    }

    private IEnumerable<OpenXmlElement> Figure(PaperBlock.Figure figure)
    {
        double width = Math.Min(figure.WidthInMillimetres, widthInMillimetres);
        yield return new Paragraph(new ParagraphProperties(new ParagraphStyleId { Val = WordStyles.Figure }), new Run(pictures.Of(figure, width)));
        if (figure.Caption is Phrase caption)
        {
            yield return WordText.Paragraph(WordStyles.Caption, caption);
        }
    }

    /// <summary>A strip a step, and a broken line to fold along between them.</summary>
    private IEnumerable<OpenXmlElement> FoldOver(PaperBlock.FoldOver fold)
    {
        var inside = new WordBlocks(main, numbering, widthInMillimetres - (2 * WordTables.PaddingInMillimetres));
        OpenXmlElement[][] strips =
        [
            .. fold.Steps.Select((step, i) => i + 1 < fold.Steps.Count
                ? [.. inside.Content(step), WordText.Paragraph(WordStyles.Small, fold.Fold, new Justification { Val = JustificationValues.Center })]
                : inside.Content(step)),
        ];
        return [WordTables.Strips(widthInMillimetres, strips), Gap()];
    }

    private IEnumerable<OpenXmlElement> Panel(PaperBlock.Panel panel)
    {
        var inside = new WordBlocks(main, numbering, widthInMillimetres - (2 * WordTables.PaddingInMillimetres), isInPanel: true);
        OpenXmlElement[] content = [WordText.Paragraph(WordStyles.PanelTitle, panel.Title), .. inside.Content(panel.Content)];
        return [WordTables.Frame(widthInMillimetres, panel.Kind == PanelKind.Caution, 0, content), Gap()];
    }

    /// <summary>Two tables in a row would become one: a low paragraph keeps them apart.</summary>
    private static Paragraph Gap() => WordText.Paragraph(WordStyles.Gap, "");

    private static string StyleOf(ParagraphLook look) => look switch
    {
        ParagraphLook.Lead => WordStyles.Lead,
        ParagraphLook.Huge => WordStyles.Huge,
        ParagraphLook.Small => WordStyles.Small,
        ParagraphLook.Step => WordStyles.Step,
        ParagraphLook.Given => WordStyles.Given,
        _ => WordStyles.Body,
    };
}
