using Calx.Papers.Charts;
using Calx.Papers.Texts;
using Calx.Practicals.Definition;

namespace Calx.Papers.Drawings;

/// <summary>A practical's drawing of its apparatus: a labelled section in line, composed of the parts that its file names. The
/// conventions are in docs/methods/drawings.md.</summary>
public static class ApparatusDrawing
{
    /// <summary>Draws it, or returns null where the practical has no such drawing.</summary>
    /// <param name="practical">The practical.</param>
    /// <param name="drawingId">Id of one of its <see cref="Practical.Drawings"/>.</param>
    /// <param name="id">Unique on the page; by default the drawing's own.</param>
    /// <param name="language">The language of its description; null for British English.</param>
    /// <returns>The picture; its heading is the drawing's label, its caption the steps that it belongs to.</returns>
    public static Chart? Of(Practical practical, string drawingId, string? id = null, PaperLanguage? language = null)
    {
        ArgumentNullException.ThrowIfNull(practical);
        ArgumentException.ThrowIfNullOrWhiteSpace(drawingId);
        Drawing? drawing = practical.Drawings.FirstOrDefault(d => d.Id == drawingId);
        if (drawing is null)
        {
            return null;
        }

        IEnumerable<string> steps = practical.Steps.Where(s => drawing.Steps.Contains(s.Id)).Select(s => s.Label);
        return new Chart(drawing.Label, Picture(drawing, id ?? $"drawing-{drawing.Id}", DrawingSize.Wide, language ?? PaperLanguage.BritishEnglish), string.Join("; ", steps));
    }

    /// <summary>The picture of a drawing.</summary>
    internal static SvgPicture Picture(Drawing drawing, string id, DrawingSize size, PaperLanguage language)
    {
        var layout = new DrawingLayout(drawing, size);
        double top = layout.Top;
        var picture = new SvgPicture(id, layout.Width, layout.Height - layout.Top, drawing.Label, DrawingWords.Of(drawing, language));
        if (layout.Parts.Any(part => part is { Support: null, Part.Kind: not Apparatus.Mat }))
        {
            picture.Line(layout.Bench.From.X, layout.Bench.From.Y - top, layout.Bench.To.X, layout.Bench.To.Y - top, Stroke.Fine);
        }

        foreach (Stroke stroke in layout.Parts.SelectMany(part => part.Shape.Strokes))
        {
            Draw(picture, stroke, top);
        }

        foreach (Label label in layout.Labels)
        {
            picture.Line(label.From.X, label.From.Y - top, label.End.X, label.End.Y - top, "ruled");
            foreach ((Spot at, string text) in layout.Written(label))
            {
                picture.Text(at.X, at.Y - top, text, anchor: label.Left ? "end" : "start");
            }
        }

        return picture;
    }

    private static void Draw(SvgPicture picture, Stroke stroke, double top)
    {
        (double, double)[] points = [.. stroke.Points.Select(p => (p.X, p.Y - top))];
        if (stroke.Closed)
        {
            picture.Polygon(points, stroke.Role);
        }
        else
        {
            picture.Path(points, stroke.Role);
        }
    }
}
