using Calx.Papers.Documents;

namespace Calx.Papers.Tests.Handouts;

/// <summary>What stands on a paper, as text.</summary>
internal static class Written
{
    /// <summary>Every text of a paper in order, a line each.</summary>
    public static IReadOnlyList<string> LinesOf(Paper paper) => [paper.Title.Text, .. Lines(paper.Content)];

    /// <summary>All of it.</summary>
    public static string Of(Paper paper) => string.Join('\n', LinesOf(paper));

    /// <summary>Every part of a paper, those inside others too.</summary>
    public static IEnumerable<PaperBlock> Blocks(IEnumerable<PaperBlock> blocks) => blocks.SelectMany(block => (PaperBlock[])
    [
        block,
        .. block switch
        {
            PaperBlock.Panel panel => Blocks(panel.Content),
            PaperBlock.FoldOver fold => Blocks(fold.Steps.SelectMany(s => s)),
            PaperBlock.CutApart cut => Blocks(cut.Parts.SelectMany(p => p)),
            PaperBlock.Beside beside => Blocks([.. beside.Left, .. beside.Right]),
            _ => [],
        },
    ]);

    private static IEnumerable<string> Lines(IEnumerable<PaperBlock> blocks) => Blocks(blocks).SelectMany(block => block switch
    {
        PaperBlock.Heading heading => [heading.Text.Text],
        PaperBlock.Paragraph paragraph => [paragraph.Text.Text],
        PaperBlock.Items items => items.Texts.Select(t => t.Text),
        PaperBlock.Panel panel => [panel.Title.Text],
        PaperBlock.Table table => [.. table.Content.Columns.Select(c => c.Heading.Text), .. table.Content.Rows.SelectMany(r => r.Select(c => c.Text.Text))],
        PaperBlock.Equation equation => [Math(equation.Content)],
        _ => (IEnumerable<string>)[],
    });

    private static string Math(MathPart part) => part switch
    {
        MathPart.Words words => words.Text,
        MathPart.Row row => string.Concat(row.Parts.Select(Math)),
        MathPart.Fraction fraction => $"({Math(fraction.Above)})/({Math(fraction.Below)})",
        MathPart.Bracketed bracketed => $"({Math(bracketed.Content)})",
        _ => "[]",
    };
}
