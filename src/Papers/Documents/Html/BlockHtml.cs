using System.Globalization;
using System.Text;
using Calx.Papers.Charts;

namespace Calx.Papers.Documents.Html;

/// <summary>The parts of a paper in HTML.</summary>
internal sealed class BlockHtml(StringBuilder page, StyleBook styles)
{
    public void Write(IEnumerable<PaperBlock> blocks)
    {
        foreach (PaperBlock block in blocks)
        {
            Write(block);
        }
    }

    private void Write(PaperBlock block)
    {
        switch (block)
        {
            case PaperBlock.Heading heading:
                Append($"<h{heading.Level + 1}>{PhraseHtml.Of(heading.Text)}</h{heading.Level + 1}>\n");
                break;
            case PaperBlock.Paragraph paragraph:
                Append($"<p{ClassOf(paragraph.Look)}>{PhraseHtml.Of(paragraph.Text)}</p>\n");
                break;
            case PaperBlock.Items items:
                Write(items);
                break;
            case PaperBlock.Table table:
                TableHtml.Write(page, styles, table.Content);
                break;
            case PaperBlock.Figure figure:
                Append($"<figure class=\"{styles.ClassOf($"width:{SvgPicture.N(figure.WidthInMillimetres)}mm")}\">\n{figure.Picture.Inline()}");
                Append(figure.Caption is Phrase caption ? $"<figcaption>{PhraseHtml.Of(caption)}</figcaption>\n</figure>\n" : "</figure>\n");
                break;
            case PaperBlock.Equation equation:
                Append($"<p class=\"equation\"><math displaystyle=\"true\">{MathHtml.Of(equation.Content)}</math></p>\n");
                break;
            case PaperBlock.WritingLines lines:
                Append($"<div class=\"lines\" aria-hidden=\"true\">{string.Concat(Enumerable.Repeat("<i></i>", lines.Count))}</div>\n");
                break;
            case PaperBlock.WorkingSpace space:
                Append($"<div class=\"space {styles.ClassOf($"height:{SvgPicture.N(space.HeightInMillimetres)}mm")}\" aria-hidden=\"true\"></div>\n");
                break;
            case PaperBlock.Panel panel:
                Append($"<section class=\"panel {(panel.Kind == PanelKind.Caution ? "caution" : "help")}\">\n<h3>{PhraseHtml.Of(panel.Title)}</h3>\n");
                Write(panel.Content);
                Append("</section>\n");
                break;
            case PaperBlock.Beside beside:
                Append($"<div class=\"beside {styles.ClassOf($"grid-template-columns:minmax(0,{SvgPicture.N(100 * beside.LeftShare)}fr) minmax(0,{SvgPicture.N(100 * (1 - beside.LeftShare))}fr)")}\">\n<div>\n");
                Write(beside.Left);
                Append("</div>\n<div>\n");
                Write(beside.Right);
                Append("</div>\n</div>\n");
                break;
            case PaperBlock.FoldOver fold:
                Opened(fold, 0);
                Folded(fold);
                break;
            case PaperBlock.CutApart cut:
                foreach (IReadOnlyList<PaperBlock> part in cut.Parts)
                {
                    Append("<section class=\"cut\">\n");
                    Write(part);
                    Append("</section>\n");
                }

                break;
            case PaperBlock.PageBreak:
                Append("<div class=\"break\"></div>\n");
                break;
            default:
                throw new ArgumentException($"{block.GetType().Name} is no part of a paper.", nameof(block));
        }
    }

    /// <summary>For a screen: each step is inside the one before, so that they open one after another. No script is needed.</summary>
    private void Opened(PaperBlock.FoldOver fold, int step)
    {
        Append(step == 0 ? "<div class=\"opened\">\n" : $"<details>\n<summary>{PhraseHtml.Of(fold.Open)}</summary>\n");
        Write(fold.Steps[step]);
        if (step + 1 < fold.Steps.Count)
        {
            Opened(fold, step + 1);
        }

        Append(step == 0 ? "</div>\n" : "</details>\n");
    }

    /// <summary>For paper: a browser prints what is closed as closed, so that the steps stand there once more, a line to fold between them.</summary>
    private void Folded(PaperBlock.FoldOver fold)
    {
        Append("<div class=\"folded\">\n");
        for (int step = 0; step < fold.Steps.Count; step++)
        {
            Append("<div class=\"strip\">\n");
            Write(fold.Steps[step]);
            Append(step + 1 < fold.Steps.Count ? $"<p class=\"fold\">{PhraseHtml.Of(fold.Fold)}</p>\n</div>\n" : "</div>\n");
        }

        Append("</div>\n");
    }

    private void Write(PaperBlock.Items items)
    {
        string tag = items.Kind == ListKind.Numbers ? "ol" : "ul";
        string[] classes =
        [
            .. items.Kind == ListKind.Ticks ? ["ticks"] : Array.Empty<string>(),
            .. items.Columns > 1 ? [styles.ClassOf(FormattableString.Invariant($"columns:{items.Columns}"))] : Array.Empty<string>(),
        ];
        Append(classes.Length == 0 ? $"<{tag}>\n" : $"<{tag} class=\"{string.Join(' ', classes)}\">\n");
        foreach (Phrase text in items.Texts)
        {
            Append($"<li>{PhraseHtml.Of(text)}</li>\n");
        }

        Append($"</{tag}>\n");
    }

    private static string ClassOf(ParagraphLook look) => look switch
    {
        ParagraphLook.Lead => " class=\"lead\"",
        ParagraphLook.Huge => " class=\"huge\"",
        ParagraphLook.Small => " class=\"small\"",
        ParagraphLook.Step => " class=\"step\"",
        ParagraphLook.Given => " class=\"given\"",
        _ => string.Empty,
    };

    private void Append(FormattableString text) => page.Append(text.ToString(CultureInfo.InvariantCulture));

    private void Append(string text) => page.Append(text);
}
