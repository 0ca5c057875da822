using System.Globalization;
using System.Text.RegularExpressions;
using System.Xml.Linq;
using Calx.Papers.Codes;
using ZXing;
using ZXing.Common;
using ZXing.QrCode;

namespace Calx.Papers.Tests.Codes;

// Read back by a decoder that knows nothing of how the picture was made.
public partial class QrPictureTests
{
    [Theory]
    [InlineData("http://192.168.1.20:8080/j/BCDFGH")]
    [InlineData("x")]
    [InlineData("https://calx.larkmoor.example/join?code=QWRTPS&group=12 <&\" ümlaut")]
    public void A_camera_reads_the_text(string text) => Assert.Equal(text, Read(QrPicture.Of(text)));

    [Fact]
    public void The_longest_text_can_still_be_read()
    {
        string text = string.Concat(Enumerable.Range(0, QrPicture.LongestText).Select(i => (char)('a' + (i % 26))));

        Assert.Equal(text, Read(QrPicture.Of(text)));
    }

    // ISO/IEC 18004, 5.3.8: four modules of white all round.
    [Fact]
    public void A_margin_of_four_modules_is_white()
    {
        bool[,] dark = Modules(QrPicture.Of("http://192.168.1.20:8080/j/BCDFGH"));
        int size = dark.GetLength(0);

        Assert.True(dark[4, 4]);
        for (int i = 0; i < size; i++)
        {
            for (int margin = 0; margin < 4; margin++)
            {
                Assert.False(dark[margin, i] || dark[i, margin] || dark[size - 1 - margin, i] || dark[i, size - 1 - margin]);
            }
        }
    }

    [Fact]
    public void It_names_and_describes_itself_and_has_no_style()
    {
        string picture = QrPicture.Of("http://a/<script>", "Join <here>", "join");
        XElement svg = XElement.Parse(picture);

        Assert.Equal("img", svg.Attribute("role")!.Value);
        Assert.Equal("join-t join-d", svg.Attribute("aria-labelledby")!.Value);
        Assert.Equal("Join <here>", svg.Element("title")!.Value);
        Assert.Equal("http://a/<script>", svg.Element("desc")!.Value);
        Assert.DoesNotContain("style", picture, StringComparison.Ordinal);
        Assert.Equal(picture, QrPicture.Of("http://a/<script>", "Join <here>", "join"));
    }

    [Fact]
    public void A_text_that_is_empty_or_too_long_is_refused()
    {
        Assert.Throws<ArgumentException>(() => QrPicture.Of(" "));
        Assert.Throws<ArgumentOutOfRangeException>(() => QrPicture.Of(new string('a', QrPicture.LongestText + 1)));
    }

    private static string? Read(string picture)
    {
        const int pixels = 4;
        bool[,] dark = Modules(picture);
        int side = pixels * dark.GetLength(0);
        byte[] light = new byte[side * side];
        for (int i = 0; i < light.Length; i++)
        {
            light[i] = dark[i / side / pixels, i % side / pixels] ? (byte)0 : (byte)255;
        }

        var source = new RGBLuminanceSource(light, side, side, RGBLuminanceSource.BitmapFormat.Gray8);
        return new QRCodeReader().decode(new BinaryBitmap(new HybridBinarizer(source)))?.Text;
    }

    private static bool[,] Modules(string picture)
    {
        XElement svg = XElement.Parse(picture);
        int side = int.Parse(svg.Attribute("viewBox")!.Value.Split(' ')[2], CultureInfo.InvariantCulture);
        bool[,] dark = new bool[side, side];
        foreach (Match run in Run().Matches(svg.Element("path")!.Attribute("d")!.Value))
        {
            int[] n = [.. run.Groups.Values.Skip(1).Select(g => int.Parse(g.Value, CultureInfo.InvariantCulture))];
            for (int x = n[0]; x < n[0] + n[2]; x++)
            {
                dark[n[1], x] = true;
            }
        }

        return dark;
    }

    [GeneratedRegex(@"M(\d+) (\d+)h(\d+)v1h-\d+z")]
    private static partial Regex Run();
}
