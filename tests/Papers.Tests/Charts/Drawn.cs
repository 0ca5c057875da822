using System.Globalization;
using System.Xml.Linq;
using Calx.Papers.Charts;

namespace Calx.Papers.Tests.Charts;

/// <summary>A drawn picture, read back.</summary>
internal static class Drawn
{
    public static readonly XNamespace Svg = "http://www.w3.org/2000/svg";

    public static IEnumerable<XElement> OfRole(XElement picture, string name, string role) =>
        picture.Descendants(Svg + name).Where(e => e.Attribute("class")!.Value == role);

    public static double Of(XElement shape, string attribute) => Number(shape.Attribute(attribute)!.Value);

    public static (double X, double Y)[] Corners(XElement shape) =>
        [.. shape.Attribute("points")!.Value.Split(' ').Select(p => p.Split(',')).Select(p => (Number(p[0]), Number(p[1])))];

    public static double Number(string text) => double.Parse(text.Replace('−', '-'), CultureInfo.InvariantCulture);

    /// <summary>By the advance widths of the font: ticks are a little smaller than labels.</summary>
    public static (double Left, double Right) Extent(XElement text)
    {
        double x = Of(text, "x");
        double width = TextWidth.Of(text.Value, text.Attribute("class")!.Value == "tick" ? 14 : 15);
        return text.Attribute("text-anchor")!.Value switch
        {
            "end" => (x - width, x),
            "middle" => (x - (width / 2), x + (width / 2)),
            _ => (x, x + width),
        };
    }

    public static void AssertNoLabelCovers(XElement picture, string named)
    {
        XElement[] texts = [.. picture.Descendants(Svg + "text")];
        Assert.NotEmpty(texts);
        for (int i = 0; i < texts.Length; i++)
        {
            for (int j = i + 1; j < texts.Length; j++)
            {
                (double leftA, double rightA) = Extent(texts[i]);
                (double leftB, double rightB) = Extent(texts[j]);
                double apart = Math.Abs(Of(texts[i], "y") - Of(texts[j], "y"));
                Assert.False(leftA < rightB - 1 && leftB < rightA - 1 && apart < 11, $"'{texts[i].Value}' and '{texts[j].Value}' in {named}");
            }
        }
    }

    public static void AssertInside(XElement picture)
    {
        double[] box = [.. picture.Attribute("viewBox")!.Value.Split(' ').Select(Number)];
        foreach (XElement shape in picture.Descendants(Svg + "circle"))
        {
            Assert.InRange(Of(shape, "cx"), 0, box[2]);
            Assert.InRange(Of(shape, "cy"), 0, box[3]);
        }

        foreach (XElement text in picture.Descendants(Svg + "text"))
        {
            (double left, double right) = Extent(text);
            Assert.True(left >= -4 && right <= box[2] + 4, $"'{text.Value}' from {left} to {right} in {box[2]}");
            Assert.InRange(Of(text, "y"), 10, box[3]);
        }
    }
}
