using System.Globalization;
using System.Text;
using Calx.Papers.Charts;
using Calx.Papers.Documents;
using Calx.Papers.Drawings;
using Calx.Papers.Reports;
using Calx.Papers.Texts;
using Calx.Practicals.Definition;

namespace Calx.Papers.Handouts;

/// <summary>A drawing or chart that stands on a paper, as a file of its own: for slides and for sheets of one's own.</summary>
public sealed class PaperPicture
{
    /// <summary>Dots per inch of a bitmap: what printers of schools can show of line drawings (common practice, no source).</summary>
    public const double DotsPerInch = 300;

    /// <summary>660 units of a drawing, in mm, as it is printed from margin to margin.</summary>
    private const double WidthOfDrawing = 150;

    private readonly SvgPicture picture;

    private PaperPicture(string id, SvgPicture picture, double widthInMillimetres) =>
        (Id, this.picture, WidthInMillimetres) = (id, picture, widthInMillimetres);

    /// <summary>What its file is called, without the ending: lower-case letters, digits and hyphens.</summary>
    public string Id { get; }

    /// <summary>What it shows.</summary>
    public string Title => picture.Title;

    /// <summary>How wide it is printed, in mm.</summary>
    public double WidthInMillimetres { get; }

    /// <summary>SVG with its font inside: the same bytes for the same picture.</summary>
    public byte[] Svg() => Encoding.UTF8.GetBytes(picture.Plain(WidthInMillimetres, ReportStyle.Faces));

    /// <summary>PNG on white, <see cref="DotsPerInch"/> at its width.</summary>
    public byte[] Png() => PngResolution.Of(PngPicture.Of(picture, WidthInMillimetres, DotsPerInch), DotsPerInch);

    /// <summary>The pictures of some papers, each once. Where a paper has a drawing of the apparatus, all drawings of the practical are
    /// among them, at the size that fills a line.</summary>
    internal static IReadOnlyList<PaperPicture> AllOf(Practical practical, IReadOnlyList<Paper> papers, PaperLanguage language)
    {
        PaperBlock.Figure[] figures = [.. papers.SelectMany(p => Figures(p.Content))];
        string[] drawn = [.. practical.Drawings.Select(d => d.Label)];
        var pictures = new List<PaperPicture>();
        if (figures.Any(f => drawn.Contains(f.Picture.Title)))
        {
            foreach (Drawing drawing in practical.Drawings)
            {
                string id = Named($"drawing-{drawing.Id}", pictures);
                pictures.Add(new(id, ApparatusDrawing.Picture(drawing, id, DrawingSize.Wide, language), WidthOfDrawing));
            }
        }

        foreach (PaperBlock.Figure chart in figures.Where(f => !drawn.Contains(f.Picture.Title)).DistinctBy(f => f.Picture.Printed()))
        {
            pictures.Add(new(Named(chart.Picture.Id, pictures), chart.Picture, chart.WidthInMillimetres));
        }

        return pictures;
    }

    private static IEnumerable<PaperBlock.Figure> Figures(IEnumerable<PaperBlock> blocks) => blocks.SelectMany(block => block switch
    {
        PaperBlock.Figure figure => [figure],
        PaperBlock.Beside beside => Figures([.. beside.Left, .. beside.Right]),
        PaperBlock.Panel panel => Figures(panel.Content),
        _ => (IEnumerable<PaperBlock.Figure>)[],
    });

    /// <summary>A name that every file system takes and that no other picture has.</summary>
    private static string Named(string wanted, List<PaperPicture> others)
    {
        string safe = new([.. wanted.ToLowerInvariant().Select(c => char.IsAsciiLetterOrDigit(c) ? c : '-')]);
        string name = safe;
        for (int n = 2; others.Any(o => o.Id == name); n++)
        {
            name = string.Create(CultureInfo.InvariantCulture, $"{safe}-{n}");
        }

        return name;
    }
}
