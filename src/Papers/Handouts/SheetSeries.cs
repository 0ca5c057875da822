using Calx.Papers.Charts;
using Calx.Papers.Documents;
using Calx.Papers.Texts;
using Calx.Practicals.Definition;

namespace Calx.Papers.Handouts;

/// <summary>Where a group writes mass against time, and a page of squared paper to draw it on.</summary>
internal static class SheetSeries
{
    private const int MostRows = 5;
    private const double WidthInMillimetres = 172;
    private const double HeightInMillimetres = 215;

    /// <summary>The table of times; nothing where the practical takes no series.</summary>
    /// <param name="practical">The practical.</param>
    /// <param name="language">The language of the sheet's own texts.</param>
    /// <param name="shown">What stands beside each time between the first and the last; null leaves it to be written.</param>
    public static IEnumerable<PaperBlock> Table(Practical practical, PaperLanguage language, IReadOnlyList<string>? shown = null)
    {
        if (practical.Series is not SeriesDefinition series)
        {
            yield break;
        }

        StudentSheetTexts texts = new(language);
        double[] between = [.. series.TimesInMinutes.Skip(1).SkipLast(1)];
        int blocks = (between.Length + MostRows - 1) / MostRows;
        int rows = (between.Length + blocks - 1) / blocks;
        PaperColumn[] columns = [.. Enumerable.Range(0, blocks).SelectMany(_ => (PaperColumn[])
        [
            new(texts.SeriesTime(series.TimeUnit), 1.2, IsNumber: true), new(Sentences.Heading(series.Label, "g"), 1.4, IsNumber: true),
        ])];
        PaperCell[][] cells = [.. Enumerable.Range(0, rows).Select(row => (PaperCell[])
        [
            .. Enumerable.Range(0, blocks).Select(block => row + (block * rows)).SelectMany(i => i < between.Length
                ? (PaperCell[])[new(series.TimeText(between[i]), IsHeading: true), new(shown is null || i >= shown.Count ? "" : shown[i])]
                : [new(""), new("")]),
        ])];
        yield return new PaperBlock.Heading(texts.SeriesHeading, 2);
        yield return new PaperBlock.Table(new PaperTable(columns, cells, TableRuling.Framed));
        yield return new PaperBlock.Paragraph(
            texts.SeriesNote(series.TimeText(0), series.TimeText(series.UntilInMinutes), series.TimeUnit), ParagraphLook.Small);
    }

    /// <summary>A page of squared paper with the times along the bottom.</summary>
    /// <param name="practical">The practical.</param>
    /// <param name="language">The language of the axes' names.</param>
    /// <param name="numbered">Whether the axis of times has its numbers.</param>
    public static IEnumerable<PaperBlock> Squared(Practical practical, PaperLanguage language, bool numbered) =>
        practical.Series is not SeriesDefinition series ? [] :
        [
            new PaperBlock.PageBreak(),
            new PaperBlock.Figure(
                SquaredPaper.Picture(series, WidthInMillimetres, HeightInMillimetres, numbered, language),
                new StudentSheetTexts(language).SeriesAxes,
                WidthInMillimetres),
        ];
}
