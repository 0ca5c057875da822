namespace Calx.Papers.Charts;

/// <summary>A drawn chart with the words that go under it.</summary>
public sealed class Chart
{
    internal Chart(string heading, SvgPicture picture, string caption)
    {
        Heading = heading;
        Picture = picture;
        Caption = caption;
    }

    /// <summary>The picture.</summary>
    internal SvgPicture Picture { get; }

    /// <summary>What the chart shows, a few words.</summary>
    public string Heading { get; }

    /// <summary>What is not on it and why, or how to read it; may be empty.</summary>
    public string Caption { get; }

    /// <summary>The picture for a page that brings the style and colours of charts (<see cref="ChartStyle"/>): an element
    /// <c>svg</c> without any style of its own, safe to place in HTML.</summary>
    public string Inline => Picture.Inline();

    /// <summary>The picture as a file of its own: SVG 1.1 with its style, light colours, no text as paths.</summary>
    public string Svg() => Picture.Alone();
}
