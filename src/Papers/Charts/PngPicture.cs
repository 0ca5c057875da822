using Calx.Papers.Reports;
using SkiaSharp;
using Svg.Skia;
using Svg.Skia.TypefaceProviders;

namespace Calx.Papers.Charts;

/// <summary>Draws a picture as a bitmap (PNG), for those programs that take no SVG. It brings its own fonts: the machine's are
/// not asked for, so that it looks the same everywhere.</summary>
internal static class PngPicture
{
    private const double MillimetresPerInch = 25.4;

    /// <summary>Draws it.</summary>
    /// <param name="picture">The picture.</param>
    /// <param name="widthInMillimetres">How wide it is printed.</param>
    /// <param name="dotsPerInch">How finely, in dots per inch of that width.</param>
    /// <returns>The bytes of a PNG file on white, with its resolution left to the page that places it.</returns>
    public static byte[] Of(SvgPicture picture, double widthInMillimetres, double dotsPerInch = 220)
    {
        ArgumentNullException.ThrowIfNull(picture);
        using var svg = new SKSvg();
        svg.Settings.TypefaceProviders!.Clear();
        svg.Settings.TypefaceProviders.Add(new CustomTypefaceProvider(StyleFile.Open("CalxSans-Regular.ttf")));
        svg.Settings.TypefaceProviders.Add(new CustomTypefaceProvider(StyleFile.Open("CalxSans-Bold.ttf")));
        svg.FromSvg(picture.Printed());
        float scale = (float)(widthInMillimetres / MillimetresPerInch * dotsPerInch / picture.Width);
        using var bytes = new MemoryStream();
        return svg.Save(bytes, SKColors.White, SKEncodedImageFormat.Png, 100, scale, scale)
            ? bytes.ToArray() : throw new InvalidOperationException("The picture could not be drawn.");
    }
}
