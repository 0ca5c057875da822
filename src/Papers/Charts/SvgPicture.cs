using System.Globalization;
using System.Text;

namespace Calx.Papers.Charts;

/// <summary>Builds one SVG picture. Colours are named by role (<c>ink</c>, <c>mark</c>, <c>odd</c> ...), so that the page
/// decides them for light, dark and print; a picture on its own carries the light ones.</summary>
internal sealed class SvgPicture
{
    private const string Space = " xmlns=\"http://www.w3.org/2000/svg\"";

    private readonly StringBuilder body = new();
    private readonly string id;
    private readonly string title;
    private readonly string description;

    /// <summary>Starts a picture.</summary>
    /// <param name="id">Unique on the page; title and description are found by it.</param>
    /// <param name="width">Width of the drawing in its own units.</param>
    /// <param name="height">Height in its own units.</param>
    /// <param name="title">What the picture shows.</param>
    /// <param name="description">What is to be seen in it, for those who cannot.</param>
    public SvgPicture(string id, double width, double height, string title, string description)
    {
        this.id = Escaped(id);
        Width = width;
        Height = height;
        this.title = title;
        this.description = description;
    }

    /// <summary>Its id.</summary>
    public string Id => id;

    /// <summary>What it shows.</summary>
    public string Title => title;

    /// <summary>What is to be seen in it, for those who cannot.</summary>
    public string Description => description;

    /// <summary>Width in the drawing's own units.</summary>
    public double Width { get; }

    /// <summary>Height in the drawing's own units.</summary>
    public double Height { get; }

    /// <summary>A number in SVG: two decimals, a full stop.</summary>
    public static string N(double value) => Math.Round(value, 2).ToString("0.##", CultureInfo.InvariantCulture);

    /// <summary>Text safe between tags and in attributes.</summary>
    public static string Escaped(string text) => new StringBuilder(text)
        .Replace("&", "&amp;").Replace("<", "&lt;").Replace(">", "&gt;").Replace("\"", "&quot;").ToString();

    public void Line(double x1, double y1, double x2, double y2, string role) =>
        body.Append(CultureInfo.InvariantCulture, $"<line class=\"{role}\" x1=\"{N(x1)}\" y1=\"{N(y1)}\" x2=\"{N(x2)}\" y2=\"{N(y2)}\"/>\n");

    /// <summary>A rectangle; <paramref name="tip"/> is shown where a pointer rests on it.</summary>
    public void Rectangle(double x, double y, double width, double height, string role, string? tip = null) =>
        body.Append(CultureInfo.InvariantCulture, $"<rect class=\"{role}\" x=\"{N(x)}\" y=\"{N(y)}\" width=\"{N(width)}\" height=\"{N(height)}\"{Ended("rect", tip)}\n");

    public void Circle(double x, double y, double radius, string role) =>
        body.Append(CultureInfo.InvariantCulture, $"<circle class=\"{role}\" cx=\"{N(x)}\" cy=\"{N(y)}\" r=\"{N(radius)}\"/>\n");

    /// <summary>A square on its corner: the shape of a result to look into, so that colour is not the only sign.</summary>
    public void Diamond(double x, double y, double radius, string role) => Polygon(
        [(x, y - radius), (x + radius, y), (x, y + radius), (x - radius, y)], role);

    /// <summary>A closed shape; <paramref name="tip"/> is shown where a pointer rests on it.</summary>
    public void Polygon(IEnumerable<(double X, double Y)> corners, string role, string? tip = null) =>
        body.Append(CultureInfo.InvariantCulture, $"<polygon class=\"{role}\" points=\"{string.Join(' ', corners.Select(c => $"{N(c.X)},{N(c.Y)}"))}\"{Ended("polygon", tip)}\n");

    public void Path(IReadOnlyList<(double X, double Y)> points, string role) =>
        body.Append(CultureInfo.InvariantCulture, $"<polyline class=\"{role}\" points=\"{string.Join(' ', points.Select(c => $"{N(c.X)},{N(c.Y)}"))}\"/>\n");

    /// <summary>Text; its place is the start, middle or end of its base line.</summary>
    public void Text(double x, double y, string text, string role = "label", string anchor = "start", double? turned = null)
    {
        string turn = turned is double angle ? $" transform=\"rotate({N(angle)} {N(x)} {N(y)})\"" : string.Empty;
        body.Append(CultureInfo.InvariantCulture, $"<text class=\"{role}\" x=\"{N(x)}\" y=\"{N(y)}\" text-anchor=\"{anchor}\"{turn}>{Escaped(text)}</text>\n");
    }

    /// <summary>The picture for a page that has the style of <see cref="ChartStyle"/>.</summary>
    public string Inline() => Whole(string.Empty, string.Empty);

    /// <summary>The picture as a file of its own.</summary>
    public string Alone() => Whole(Space, $"<style>{ChartStyle.Alone}</style>\n");

    /// <summary>The picture for drawing it as a bitmap on white: its style has no custom properties.</summary>
    public string Printed() => Whole(Space, $"<style>{ChartStyle.Printed}</style>\n");

    /// <summary>The picture as a file of its own for programs that know few rules of CSS, on white and with its size.</summary>
    /// <param name="widthInMillimetres">How wide it is printed.</param>
    /// <param name="faces">Rules of CSS that bring a font; empty for none.</param>
    public string Plain(double widthInMillimetres, string faces = "") => Whole(
        $"{Space} width=\"{N(widthInMillimetres)}mm\" height=\"{N(widthInMillimetres * Height / Width)}mm\"", $"<style>{faces}{ChartStyle.Plain}</style>\n");

    private static string Ended(string shape, string? tip) => tip is null ? "/>" : $"><title>{Escaped(tip)}</title></{shape}>";

    private string Whole(string space, string style) => string.Create(
        CultureInfo.InvariantCulture,
        $"<svg{space} class=\"chart\" viewBox=\"0 0 {N(Width)} {N(Height)}\" role=\"img\" aria-labelledby=\"{id}-t {id}-d\">\n<title id=\"{id}-t\">{Escaped(title)}</title>\n<desc id=\"{id}-d\">{Escaped(description)}</desc>\n{style}{body}</svg>\n");
}
