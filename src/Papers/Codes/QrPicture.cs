using System.Collections;
using System.Globalization;
using System.Text;
using Calx.Papers.Charts;
using QRCoder;

namespace Calx.Papers.Codes;

/// <summary>A text, such as a lesson's address, as a QR code (ISO/IEC 18004) for a camera to read: an SVG element of our own
/// drawing, black on white in any theme, with the white margin of four modules that the standard asks for.</summary>
public static class QrPicture
{
    /// <summary>Longest text: more would need modules too small for the back of a room.</summary>
    public const int LongestText = 400;

    /// <summary>Draws it. About 15 % of the code may be covered or spoilt (level M).</summary>
    /// <param name="text">What a camera reads, 1 to <see cref="LongestText"/> characters.</param>
    /// <param name="title">What it is for, in a few words; the text itself is its description.</param>
    /// <param name="id">Unique on the page; title and description are found by it.</param>
    /// <returns>An element <c>svg</c> of class <c>qr</c> without any style, safe to place in HTML; the same bytes for the same
    /// text.</returns>
    /// <exception cref="ArgumentException">The text is empty.</exception>
    /// <exception cref="ArgumentOutOfRangeException">The text is too long.</exception>
    public static string Of(string text, string title = "QR code", string id = "qr")
    {
        ArgumentException.ThrowIfNullOrWhiteSpace(text);
        ArgumentOutOfRangeException.ThrowIfGreaterThan(text.Length, LongestText, nameof(text));
        using var generator = new QRCodeGenerator();
        using QRCodeData code = generator.CreateQrCode(text, QRCodeGenerator.ECCLevel.M);
        List<BitArray> rows = code.ModuleMatrix;
        string name = SvgPicture.Escaped(id);
        return string.Create(
            CultureInfo.InvariantCulture,
            $"""
            <svg class="qr" viewBox="0 0 {rows.Count} {rows.Count}" role="img" aria-labelledby="{name}-t {name}-d" shape-rendering="crispEdges">
            <title id="{name}-t">{SvgPicture.Escaped(title)}</title>
            <desc id="{name}-d">{SvgPicture.Escaped(text)}</desc>
            <rect width="{rows.Count}" height="{rows.Count}" fill="#fff"/>
            <path fill="#000" d="{Modules(rows)}"/>
            </svg>

            """);
    }

    /// <summary>Each run of dark modules in a row as a rectangle; the matrix brings its white margin.</summary>
    private static string Modules(List<BitArray> rows)
    {
        var path = new StringBuilder();
        for (int y = 0; y < rows.Count; y++)
        {
            for (int x = 0; x < rows.Count; x++)
            {
                int from = x;
                while (x < rows.Count && rows[y][x])
                {
                    x++;
                }

                if (x > from)
                {
                    path.Append(CultureInfo.InvariantCulture, $"M{from} {y}h{x - from}v1h-{x - from}z");
                }
            }
        }

        return path.ToString();
    }
}
